import fc from 'fast-check'
import { expect, test } from 'vitest'
import { bestReplacementAge, costRate, costRateAtFailure } from './replacement-age'

const rope = { shape: 3, scale: 36 }
const costs = { planned: 25, failure: 150 }

test('the best age is where the cost a month is least, and it flattens there', () => {
  const best = bestReplacementAge(rope, costs) ?? NaN
  expect(best).toBeCloseTo(16.78, 2)
  const least = costRate(rope, costs, best)
  for (const age of [8, 12, 14, 20, 30]) expect(costRate(rope, costs, age)).toBeGreaterThan(least)
  expect(costRate(rope, costs, 14) / least).toBeLessThan(1.04)
  expect(costRate(rope, costs, 20) / least).toBeLessThan(1.04)
  expect(costRateAtFailure(rope, costs)).toBeCloseTo(4.67, 2)
})

test('parts that do not wear out, and failures that cost no more, are never replaced by age', () => {
  expect(bestReplacementAge({ shape: 1, scale: 36 }, costs)).toBeUndefined()
  expect(bestReplacementAge(rope, { planned: 25, failure: 25 })).toBeUndefined()
})

test('the best age grows with the life and falls with the cost of a failure', () => {
  const scale = fc.double({ min: 5, max: 100, noNaN: true })
  const failure = fc.double({ min: 40, max: 2000, noNaN: true })
  fc.assert(
    fc.property(scale, failure, (eta, cost) => {
      const best = bestReplacementAge({ shape: 3, scale: eta }, { planned: 25, failure: cost }) ?? NaN
      const dearer = bestReplacementAge({ shape: 3, scale: eta }, { planned: 25, failure: cost * 1.5 }) ?? NaN
      const longer = bestReplacementAge({ shape: 3, scale: eta * 2 }, { planned: 25, failure: cost }) ?? NaN
      expect(dearer).toBeLessThan(best)
      expect(longer / best).toBeCloseTo(2, 6)
    }),
  )
})
