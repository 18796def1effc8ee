import { expect, test } from 'vitest'
import { figuresOf, reworded, withFigure, type Figure } from './figures'
import { readPacks } from './packs'

const inches = (value: number): Figure => ({ path: 'value', value, unit: 'in' })

test('a figure is put in place of the printed one, and only of that one', () => {
  expect(reworded('No thicker than 1/8 in.', inches(0.125), 0.25)).toBe('No thicker than 1/4 in.')
  expect(reworded('Two rings of 4 1/4 in.', inches(4.25), 4.5)).toBe('Two rings of 4 1/2 in.')
  const pieces: Figure = { path: 'limits.0.value', value: 3, unit: 'count' }
  expect(reworded('No more than 3 pots, 13 in all.', pieces, 5)).toBe('No more than 5 pots, 13 in all.')
  expect(reworded('No more than 13 pots.', pieces, 5)).toBe('No more than 13 pots. Checked: 5.')
  expect(reworded('A ring of 4 3/8 in.', inches(0.375), 0.5)).toBe('A ring of 4 3/8 in. Checked: 1/2 in.')
  const feet: Figure = { path: 'value', value: 13, unit: 'ft3' }
  expect(reworded('At most 13 cubic feet.', feet, 1)).toBe('At most 1 cubic foot.')
  expect(reworded('No thicker than 1/8 in.', inches(0.125), 0.125)).toBe('No thicker than 1/8 in.')
})

test('every figure of every shipped check can be changed, and nothing else changes with it', () => {
  for (const pack of readPacks().values())
    for (const { check } of pack.rules) {
      if (!check) continue
      for (const [index, figure] of figuresOf(check).entries()) {
        const changed = withFigure(check, figure.path, figure.value + 1)
        const after = changed ? figuresOf(changed) : []
        expect(after.map((one, at) => one.value - (at === index ? 1 : 0))).toEqual(
          figuresOf(check).map((one) => one.value),
        )
      }
    }
})
