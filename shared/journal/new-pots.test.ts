import { InstalledPartSchema } from '@shared/schema/gear'
import { starterPots } from '@shared/design/starter-pots'
import * as v from 'valibot'
import { expect, test } from 'vitest'
import { floatNumbers, partsOfDesign } from './new-pots'

test('numbers and ranges are read as people write them', () => {
  expect(floatNumbers('1-4, 9 A7;2')).toEqual({ ok: true, value: ['1', '2', '3', '4', '9', 'A7'] })
})

test.each(['', '9-4', '1-900', 'a-very-long-number'])('“%s” is refused', (text) => {
  expect(floatNumbers(text)).toMatchObject({ ok: false, error: { code: 'invalid', path: 'numbers' } })
})

test('every starting shape gives parts that can be put in, at least a rope, netting and a float', () => {
  for (const pot of starterPots) {
    const parts = partsOfDesign(pot, '2026-05-01')
    for (const part of parts) expect(v.is(InstalledPartSchema, { ...part, id: 'x' })).toBe(true)
    expect(parts.map((part) => part.kind)).toEqual(expect.arrayContaining(['rope', 'netting', 'float']))
  }
})

test('a frame goes by its thinnest bar', () => {
  const [pot] = starterPots
  const bars = pot?.frame?.map((bar) => bar.barDiameterMm) ?? []
  const frame = pot && partsOfDesign(pot, '2026-05-01').find((part) => part.kind === 'frame')
  expect(frame?.diameterMm).toBe(Math.min(...bars))
})
