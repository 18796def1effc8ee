import { expect, test } from 'vitest'
import { wearAssumptions as sheet } from './assumptions'
import { releaseDays } from './release-days'

test('a cotton cord halves in 87 days in the cold of its trial, and sooner in warm water', () => {
  // 63 % lost in 124 days at 1 °C, rounded to 0.008 a day: ln 2/0.008.
  expect(releaseDays('cotton', sheet, 1)?.half).toBeCloseTo(86.6, 1)
  // Twice as fast 10 °C up.
  expect(releaseDays('cotton', sheet, 11)?.half).toBeCloseTo(43.3, 1)
  expect(releaseDays('cotton', sheet, 1)?.parted).toBeCloseTo(Math.log(10) / 0.008, 6)
})

test('cord of unknown make is taken as cotton, a synthetic one never parts', () => {
  expect(releaseDays(undefined, sheet)).toEqual(releaseDays('cotton', sheet))
  expect(releaseDays('synthetic', sheet)).toBeUndefined()
})
