import { describe, expect, test } from 'vitest'
import type { Water } from '@shared/schema/water'
import { daylight } from '@shared/tides/daylight'
import { predictWater, waterDays, type WaterPrediction } from '@shared/tides/predict-water'
import { hourMs, minuteMs } from '@shared/tides/signal'
import { bellinghamChannel, fridayHarbor } from '../../tests/fixtures/station-constants'
import { bandsWithin, overlap, strengthOf } from './bands'
import { depthLadder, limitAt, thresholdOf } from './thresholds'
import { courseAt, potWindows } from './windows'

const water: Water = {
  format: 'potwright/water',
  version: 1,
  id: 'w',
  name: 'Heron Narrows',
  depthM: 12,
  tide: { source: 'station', id: 'noaa/9449880' },
  current: { source: 'station', id: 'noaa/PUG1741' },
}
const constants = { tide: fridayHarbor, current: bellinghamChannel }

function predict(changes: Partial<Water> = {}, stepS = 300): WaterPrediction {
  const span = waterDays({ ...water, ...changes }, constants, '2026-06-01', 3)
  if (!span.ok) throw new Error(span.error.message)
  return predictWater({ ...water, ...changes }, constants, span.value, stepS)
}

const ladder = depthLadder(10, 16)
const limits = (holdsMps: number, showsMps: number) => ({
  missing: [],
  holds: thresholdOf(ladder, () => holdsMps),
  // The deeper the water, the sooner the float goes under.
  shows: thresholdOf(ladder, (depth) => showsMps * (1.5 - depth / 30)),
})
const prediction = predict()
const light = daylight(prediction, prediction.zone, { latitudeDeg: 48.6, longitudeDeg: -122.7 })

describe('bands', () => {
  test('inside a band the pot holds, outside it does not', () => {
    const { holds, shows } = limits(0.7, 0.9)
    const bands = bandsWithin(prediction, [holds, shows])
    const strength = strengthOf(prediction) ?? []
    expect(bands.length).toBeGreaterThan(4)
    strength.forEach((mps, i) => {
      const timeMs = prediction.fromMs + i * 300_000
      const depth = prediction.depthM[i] ?? 0
      const inside = bands.some((band) => timeMs >= band.fromMs && timeMs <= band.toMs)
      expect(inside).toBe(mps <= Math.min(limitAt(holds, depth), limitAt(shows, depth)))
    })
  })

  test('ends lie where a fine series has them, within ten seconds', () => {
    const coarse = bandsWithin(prediction, [limits(0.7, 9).holds])
    const fine = bandsWithin(predict({}, 20), [limits(0.7, 9).holds])
    expect(coarse.length).toBe(fine.length)
    coarse.forEach((band, i) => {
      expect(Math.abs(band.toMs - (fine[i]?.toMs ?? 0))).toBeLessThan(10_000)
    })
  })

  test('a pot that always holds has one band, one that never holds has none', () => {
    expect(bandsWithin(prediction, [limits(9, 9).holds])).toEqual([
      { fromMs: prediction.fromMs, toMs: prediction.toMs },
    ])
    expect(bandsWithin(prediction, [limits(-1, 9).holds])).toEqual([])
  })

  test('wind drift counts against the pot', () => {
    const calm = bandsWithin(prediction, [limits(0.7, 9).holds])
    const windy = bandsWithin(predict({ windMps: 10 }), [limits(0.7, 9).holds])
    const long = (bands: typeof calm) => bands.reduce((sum, { fromMs, toMs }) => sum + toMs - fromMs, 0)
    expect(long(windy)).toBeLessThan(long(calm))
  })

  test('overlap keeps what two lists share', () => {
    expect(
      overlap(
        [{ fromMs: 0, toMs: 10 }],
        [
          { fromMs: 5, toMs: 20 },
          { fromMs: 30, toMs: 40 },
        ],
      ),
    ).toEqual([{ fromMs: 5, toMs: 10 }])
  })
})

describe('windows', () => {
  const found = potWindows(prediction, limits(0.7, 0.9), light, 12)

  test('set and haul lie around a slack, in daylight, while the pot holds and the float shows', () => {
    for (const window of [found.set, found.haul]) {
      if (!window) throw new Error('no window')
      expect(window.inDaylight).toBe(true)
      expect(window.slackMs).toBeGreaterThanOrEqual(window.fromMs)
      expect(window.slackMs).toBeLessThanOrEqual(window.toMs)
      expect(window.toMs - window.fromMs).toBeLessThanOrEqual(90 * minuteMs)
      expect(found.both.some((band) => band.fromMs <= window.fromMs && band.toMs >= window.toMs)).toBe(true)
      expect(light.some((day) => day.fromMs <= window.fromMs && day.toMs >= window.toMs)).toBe(true)
    }
  })

  test('the haul comes no sooner than the soak asks, and the pot that cannot hold between is called out', () => {
    const setMiddle = ((found.set?.fromMs ?? 0) + (found.set?.toMs ?? 0)) / 2
    const haulMiddle = ((found.haul?.fromMs ?? 0) + (found.haul?.toMs ?? 0)) / 2
    expect(haulMiddle - setMiddle).toBeGreaterThanOrEqual(12 * hourMs)
    expect(found.holdsThroughout).toBe(false)
    expect(potWindows(prediction, limits(9, 9), light, 12).holdsThroughout).toBe(true)
  })

  test('a current that never turns has windows without a slack', () => {
    const steady = predict({ current: { source: 'fixed', mps: 0.3 } })
    const { set } = potWindows(steady, limits(0.7, 0.9), light, 6)
    expect(set?.slackMs).toBeUndefined()
    expect(set?.strongestMps).toBeCloseTo(0.3, 9)
    expect(set?.courseAtStartDeg).toBeUndefined()
  })

  test('where the pot never holds there is no window', () => {
    expect(potWindows(prediction, limits(-1, 9), light, 6)).toMatchObject({ set: undefined, haul: undefined })
  })

  test('a window that is over is not recommended, unless the whole span is over', () => {
    const { set } = found
    const now = (set?.toMs ?? 0) - 10 * minuteMs
    const later = potWindows(prediction, limits(0.7, 0.9), light, 12, now)
    expect(later.set?.fromMs).toBeGreaterThan(set?.toMs ?? Infinity)
    expect(later.both).toEqual(found.both)
    expect(potWindows(prediction, limits(0.7, 0.9), light, 12, prediction.toMs).set).toEqual(set)
  })

  test('where something cannot be told nothing is recommended', () => {
    const unknown = { ...limits(9, 9), holds: undefined, missing: ['the bottom at this water'] }
    expect(potWindows(prediction, unknown, light, 6)).toMatchObject({
      holds: undefined,
      both: [],
      set: undefined,
      haul: undefined,
    })
  })

  test('the course up to a float is against the stream, and none near slack', () => {
    const flood = prediction.streamEvents.find(({ kind }) => kind === 'max-flood')
    const ebb = prediction.streamEvents.find(({ kind }) => kind === 'max-ebb')
    const slack = prediction.streamEvents.find(({ kind }) => kind === 'slack')
    expect(courseAt(prediction, flood?.timeMs ?? 0)).toBeCloseTo(211.2, 9)
    expect(courseAt(prediction, ebb?.timeMs ?? 0)).toBeCloseTo(31.2, 9)
    expect(courseAt(prediction, slack?.timeMs ?? 0)).toBeUndefined()
  })
})
