import { describe, expect, test } from 'vitest'
import type { Water } from '@shared/schema/water'
import { bellinghamChannel, fridayHarbor } from '../../tests/fixtures/station-constants'
import { conditionsAt } from './conditions'
import { extremesOf, predictWater, waterDays, type WaterPrediction } from './predict-water'
import { hourMs } from './signal'

const bare: Water = { format: 'potwright/water', version: 1, id: 'w', name: 'Heron Narrows', depthM: 12 }
const stationWater: Water = {
  ...bare,
  tide: { source: 'station', id: 'noaa/9449880' },
  current: { source: 'station', id: 'noaa/PUG1741' },
}
const constants = { tide: fridayHarbor, current: bellinghamChannel }

function predict(
  water: Water,
  day = '2026-06-01',
  days = 3,
  known = constants,
  stepS = 300,
): WaterPrediction {
  const span = waterDays(water, known, day, days)
  if (!span.ok) throw new Error(span.error.message)
  return predictWater(water, known, span.value, stepS)
}

describe('prediction of a water from stations', () => {
  test('series start at local midnight, and depth is the charted depth plus the height', () => {
    const p = predict(stationWater)
    expect(p.zone).toBe('America/Los_Angeles')
    expect(p.fromMs).toBe(Date.UTC(2026, 5, 1, 7))
    expect(p.depthM.length).toBe(3 * 288)
    expect(p.depthM[100]).toBeCloseTo(12 + (p.heightM?.[100] ?? NaN), 12)
    expect([p.missing, p.timesKnown, p.floodDeg, p.ebbDeg]).toEqual([[], true, 31.2, 211.2])
  })

  test('the day on which the clock goes back has 300 five-minute steps', () => {
    expect(predict(stationWater, '2026-11-01', 1).depthM.length).toBe(300)
    expect(predict(stationWater, '2026-03-08', 1).depthM.length).toBe(276)
  })

  test('extremes are those of the events, not of the nearest sample', () => {
    const coarse = predict(stationWater, '2026-06-01', 3, constants, 3600)
    const fine = predict(stationWater, '2026-06-01', 3, constants, 30)
    expect(extremesOf(coarse).currentMps).toBeCloseTo(extremesOf(fine).currentMps ?? NaN, 4)
    expect(extremesOf(coarse).lowM).toBeCloseTo(extremesOf(fine).lowM ?? NaN, 4)
    const conditions = conditionsAt(stationWater, extremesOf(fine))
    expect(conditions).toMatchObject({ basis: 'predictions for the station' })
  })

  test('a station whose constants are not there is named, and nothing is filled in', () => {
    const p = predictWater(stationWater, {}, { fromMs: 0, toMs: 24 * hourMs }, 600)
    expect(p.missing).toEqual([
      'the constants of tide station noaa/9449880',
      'the constants of current station noaa/PUG1741',
    ])
    expect([p.heightM, p.currentMps]).toEqual([undefined, undefined])
    expect(extremesOf(p)).toEqual({})
  })

  test('a place that dries at low water says so', () => {
    const p = predict({ ...stationWater, depthM: 0 })
    expect(Math.min(...p.depthM)).toBe(0)
    expect(p.notes.some((note) => note.includes('dries'))).toBe(true)
    expect(predict(stationWater).notes).toEqual([])
  })
})

describe('prediction of a water from what is typed in', () => {
  const ranged: Water = {
    ...bare,
    tide: { source: 'range', springM: 3.4, neapM: 1.6 },
    current: { source: 'rate', springMps: 1.2, neapMps: 0.6, lagH: 0, floodDeg: 350 },
  }

  test('a range and a rate give a tide and a stream that never much pass them, without clock times', () => {
    const p = predict(ranged, '2026-06-01', 30, { ...constants })
    const { currentMps = 0, lowM = NaN, highM = NaN } = extremesOf(p)
    expect(currentMps).toBeGreaterThan(1.1)
    expect(currentMps).toBeLessThan(1.3)
    expect(highM - lowM).toBeGreaterThan(3.2)
    expect(highM - lowM).toBeLessThan(3.6)
    expect(predictWater(ranged, {}, { fromMs: p.fromMs, toMs: p.toMs }, 3600).timesKnown).toBe(false)
    expect(p.ebbDeg).toBe(170)
  })

  test('a rate hangs on the high and low waters of the tide station, after its lag', () => {
    const water: Water = {
      ...bare,
      tide: { source: 'station', id: 'noaa/9449880' },
      current: { source: 'rate', springMps: 1, lagH: 0.5 },
    }
    const p = predict(water)
    expect(p.timesKnown).toBe(true)
    for (const { kind, timeMs, next } of p.streamEvents) {
      if (kind !== 'slack') continue
      const turn = p.heightEvents.find((event) => Math.abs(event.timeMs + hourMs / 2 - timeMs) < 60_000)
      if (turn) expect(turn.kind).toBe(next === 'flood' ? 'low-water' : 'high-water')
    }
    expect(p.streamEvents.filter(({ kind }) => kind === 'slack').length).toBeGreaterThan(6)
  })

  test('a rate without any tide still runs from springs to neaps', () => {
    const p = predictWater(
      { ...bare, current: { source: 'rate', springMps: 1, neapMps: 0.4 } },
      {},
      { fromMs: Date.UTC(2026, 0, 1), toMs: Date.UTC(2026, 1, 1) },
      600,
    )
    const peaks = p.streamEvents.filter(({ kind }) => kind.startsWith('max')).map(({ mps }) => Math.abs(mps))
    expect(Math.max(...peaks)).toBeGreaterThan(0.95)
    expect(Math.min(...peaks)).toBeLessThan(0.5)
    expect(p.missing).toEqual(['the tide at this water'])
  })

  test('a rate on a tide without range cannot be told', () => {
    const p = predict({ ...ranged, tide: { source: 'range', springM: 0 } })
    expect(p.currentMps).toBeUndefined()
    expect(p.missing).toEqual(['a tide above zero for the rate to follow'])
  })

  test('a fixed current is the same all day, wind drift beside it, and zero is remarked on', () => {
    const fixed = predict({ ...bare, current: { source: 'fixed', mps: 0.8 }, windMps: 10 })
    expect(new Set(fixed.currentMps)).toEqual(new Set([0.8]))
    expect(fixed.driftMps).toBeCloseTo(0.3, 12)
    expect(fixed.streamEvents).toEqual([])
    expect(predict({ ...bare, current: { source: 'fixed', mps: 0 } }).notes.join()).toContain('zero')
  })

  test('more at neaps than at springs is not told', () => {
    const tide = predict({ ...ranged, tide: { source: 'range', springM: 1, neapM: 3 } })
    expect(tide.heightM).toBeUndefined()
    expect(tide.missing).toContain('a neap range no larger than the spring range')
    const rate = predict({ ...ranged, current: { source: 'rate', springMps: 0.5, neapMps: 0.9 } })
    expect(rate.currentMps).toBeUndefined()
    expect(rate.missing).toEqual(['a neap rate no larger than the spring rate'])
  })

  test('neither tide nor current: both are missing', () => {
    expect(predict(bare).missing).toEqual(['the tide at this water', 'the current at this water'])
  })
})
