import fc from 'fast-check'
import { expect, test } from 'vitest'
import { ageAtShareFailed, meanTimeInUse, survival, survivalFrom } from './weibull'
import { fitWeibull, logLikelihood, type LifeRecord } from './weibull-fit'

/** Millions of turns to failure of 23 ball bearings: Lieblein & Zelen 1956, J. Res. Natl. Bur. Stand. 57:273-316. */
const bearings = [
  17.88, 28.92, 33.0, 41.52, 42.12, 45.6, 48.48, 51.84, 51.96, 54.12, 55.56, 67.8, 68.64, 68.64, 68.88, 84.12,
  93.12, 98.64, 105.12, 105.84, 127.92, 128.04, 173.4,
]

test('fits the ball-bearing lives of 1956: shape 2.102, scale 81.87', () => {
  const fit = fitWeibull({ failed: bearings, survived: [] })
  expect(fit?.shape).toBeCloseTo(2.102, 3)
  expect(fit?.scale).toBeCloseTo(81.87, 1)
})

/** The likeliest point of a fine grid, found by trying every one. */
function likeliestOnGrid(record: LifeRecord, shapes: readonly number[], scales: readonly number[]) {
  let best = { shape: NaN, scale: NaN, value: -Infinity }
  for (const shape of shapes)
    for (const scale of scales) {
      const value = logLikelihood(record, { shape, scale })
      if (value > best.value) best = { shape, scale, value }
    }
  return best
}
const grid = (from: number, step: number, count: number) =>
  Array.from({ length: count }, (_, i) => from + i * step)

test.each([
  ['complete', { failed: bearings, survived: [] }],
  [
    'cut off at 100',
    { failed: bearings.filter((x) => x <= 100), survived: bearings.filter((x) => x > 100).map(() => 100) },
  ],
  ['with parts taken out good', { failed: bearings, survived: [20, 50, 60, 90, 150] }],
])('agrees with the likeliest point of a grid: %s', (_, record) => {
  const fit = fitWeibull(record)
  const best = likeliestOnGrid(record, grid(1.2, 0.01, 220), grid(60, 0.25, 320))
  expect(Math.abs((fit?.shape ?? NaN) - best.shape)).toBeLessThanOrEqual(0.01)
  expect(Math.abs((fit?.scale ?? NaN) - best.scale)).toBeLessThanOrEqual(0.5)
  expect(fit && logLikelihood(record, fit)).toBeGreaterThanOrEqual(best.value)
})

test('the likelihood that is maximised is that of the density and the survival', () => {
  const life = { shape: 2.3, scale: 40 }
  const step = 1e-5
  const density = (survival(life, 30 - step) - survival(life, 30 + step)) / (2 * step)
  expect(logLikelihood({ failed: [30], survived: [50] }, life)).toBeCloseTo(
    Math.log(density) + Math.log(survival(life, 50)),
    5,
  )
})

test('says nothing of fewer than two failure ages, and refuses ages that are none', () => {
  expect(fitWeibull({ failed: [12], survived: [4, 5, 6] })).toBeUndefined()
  expect(fitWeibull({ failed: [12, 12], survived: [] })).toBeUndefined()
  expect(() => fitWeibull({ failed: [12, -1], survived: [] })).toThrow(RangeError)
})

test('finds again the life that many quantiles were drawn from, in any unit', () => {
  const life = fc.record({
    shape: fc.double({ min: 0.8, max: 5, noNaN: true }),
    scale: fc.double({ min: 0.1, max: 1e4, noNaN: true }),
  })
  fc.assert(
    fc.property(life, ({ shape, scale }) => {
      const failed = Array.from({ length: 200 }, (_, i) =>
        ageAtShareFailed({ shape, scale }, (i + 0.5) / 200),
      )
      const fit = fitWeibull({ failed, survived: [] })
      expect((fit?.shape ?? NaN) / shape).toBeCloseTo(1, 1)
      expect((fit?.scale ?? NaN) / scale).toBeCloseTo(1, 1)
    }),
    { numRuns: 40 },
  )
})

test('mean time in use is the area under the survival curve', () => {
  const life = { shape: 2.5, scale: 30 }
  const steps = 20_000
  const area =
    grid(0, 1, steps).reduce((sum, i) => sum + survival(life, ((i + 0.5) * 24) / steps), 0) * (24 / steps)
  expect(meanTimeInUse(life, 24)).toBeCloseTo(area, 6)
  expect(survivalFrom(life, 10, 5)).toBeCloseTo(survival(life, 15) / survival(life, 10), 12)
})
