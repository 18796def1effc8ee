import { createTidePredictor } from '@neaps/tide-predictor'
import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { fridayHarbor } from '../../tests/fixtures/station-constants'
import { harmonicSum } from './harmonic-sum'
import { dayMs, minuteMs } from './signal'

const { constituents, meanLevelM } = fridayHarbor
const start = Date.UTC(2026, 6, 1)

describe('harmonic sum', () => {
  test('is the tide library’s own curve, within a millimetre', () => {
    const theirs = createTidePredictor(
      constituents.map(([name, amplitude, phase]) => ({ name, amplitude, phase })),
      { offset: meanLevelM },
    ).getTimelinePrediction({
      start: new Date(start),
      end: new Date(start + 30 * dayMs),
      timeFidelity: 600,
    })
    const ours = harmonicSum(constituents, meanLevelM).sample(start, 600_000, theirs.length)
    const worst = theirs.reduce((most, { level }, i) => Math.max(most, Math.abs(level - (ours[i] ?? NaN))), 0)
    expect(worst).toBeLessThan(0.0005)
  })

  test('samples across spans are the values asked for one by one', () => {
    const tide = harmonicSum(constituents, meanLevelM)
    fc.assert(
      fc.property(
        fc.integer({ min: Date.UTC(1950, 0, 1), max: Date.UTC(2090, 0, 1) }),
        fc.integer({ min: 60, max: 3600 }),
        (from, stepS) => {
          const series = tide.sample(from, stepS * 1000, 600)
          for (const i of [0, 1, 299, 599]) expect(series[i]).toBeCloseTo(tide.at(from + i * stepS * 1000), 9)
        },
      ),
      { numRuns: 40 },
    )
  })

  test('a single constituent comes back after its period', () => {
    const m2 = harmonicSum([['M2', 1, 0]], 0)
    const periodMs = (360 / 28.9841042) * 60 * minuteMs
    expect(m2.at(start + periodMs)).toBeCloseTo(m2.at(start), 4)
  })

  test('refuses a constituent that nobody knows', () => {
    expect(() => harmonicSum([['XX9', 1, 0]], 0)).toThrow(RangeError)
  })
})
