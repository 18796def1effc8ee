import { createTidePredictor } from '@neaps/tide-predictor'
import { describe, expect, test } from 'vitest'
import type { TideConstants } from '@shared/schema/station'
import { fridayHarbor } from '../../tests/fixtures/station-constants'
import { heightSignal } from './height'
import { dayMs, minuteMs } from './signal'
import { turningPoints } from './turning-points'

const from = Date.UTC(2026, 2, 1)
const to = from + 10 * dayMs

const offsets = { reference: 'noaa/9449880', highMinutes: 23, lowMinutes: 41 }
const byRatio: TideConstants = {
  ...fridayHarbor,
  offsets: { ...offsets, kind: 'ratio', high: 1.17, low: 0.86 },
}
const byDifference: TideConstants = {
  ...fridayHarbor,
  offsets: { ...offsets, kind: 'fixed', high: 0.21, low: -0.05 },
}

describe('subordinate tide station', () => {
  test.each([
    ['ratios', byRatio],
    ['differences', byDifference],
  ])('follows the tide library’s curve for %s', (_, tide) => {
    const { kind, high, low } = tide.offsets ?? { kind: 'ratio', high: 1, low: 1 }
    const theirs = createTidePredictor(
      tide.constituents.map(([name, amplitude, phase]) => ({ name, amplitude, phase })),
      { offset: tide.meanLevelM },
    ).getTimelinePrediction({
      start: new Date(from),
      end: new Date(to),
      timeFidelity: 900,
      offsets: { height: { high, low, type: kind }, time: { high: 23, low: 41 } },
    })
    const ours = heightSignal(tide, from, to).sample(from, 900_000, theirs.length)
    const worst = theirs.reduce((most, { level }, i) => Math.max(most, Math.abs(level - (ours[i] ?? NaN))), 0)
    expect(worst).toBeLessThan(0.002)
  })

  test('its high and low waters are the reference’s, moved and scaled', () => {
    const reference = turningPoints(heightSignal(fridayHarbor, from, to), from, to, 0.01)
    const here = turningPoints(heightSignal(byRatio, from, to), from, to, 0.01)
    for (const { timeMs, value, high } of reference.slice(1, -2)) {
      const moved = timeMs + (high ? 23 : 41) * minuteMs
      const met = here.find((turn) => Math.abs(turn.timeMs - moved) < minuteMs)
      expect(met?.high).toBe(high)
      expect(met?.value).toBeCloseTo(value * (high ? 1.17 : 0.86), 3)
    }
  })
})
