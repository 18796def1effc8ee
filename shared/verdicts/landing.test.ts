import { expect, test } from 'vitest'
import { channel, standard } from '../../tests/fixtures/checked-pot'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { defaultCoefficients, type Coefficients } from '@shared/physics/coefficients'
import { landingOf } from './landing'
import { prepare } from './prepared'

/** The standard pot with a weight of lead at a height. */
const withLeadAt = (heightMm: number, coefficients: Coefficients = defaultCoefficients) =>
  landingOf(
    prepare({
      pot: { ...standard, ballast: [{ material: 'lead', massKg: 1, heightMm }] },
      materials: builtInMaterials,
      coefficients,
      conditions: channel,
    }),
  )

/** The sheet with every spread closed on its middle. */
const certain = Object.fromEntries(
  Object.entries(defaultCoefficients).map(([key, row]) => [key, { ...row, low: row.mid, high: row.mid }]),
) as Coefficients

const heights = Array.from({ length: 65 }, (_, i) => i * 5)

test('the higher the weight, the worse it lands: it holds, then is close, then fails', () => {
  const states = heights.map((height) => withLeadAt(height)?.state)
  const runs = states.filter((state, i) => state !== states[i - 1])
  expect(runs).toEqual(['holds', 'close', 'fails'])
})

test('where it is close the likely arm rights it, and where it fails it does not', () => {
  for (const height of heights) {
    const fall = withLeadAt(height)
    expect((fall?.likely.rightingArmM ?? Number.NaN) > 0).toBe(fall?.state !== 'fails')
  }
})

test('without a spread nothing is close', () => {
  for (const height of heights) expect(withLeadAt(height, certain)?.state).not.toBe('close')
})

test('a pot whose weight is not known is not told of', () => {
  const { netting: _, ...pot } = standard
  const input = { pot, materials: builtInMaterials, coefficients: defaultCoefficients, conditions: channel }
  expect(landingOf(prepare(input))).toBeUndefined()
})
