import { bench, describe } from 'vitest'
import { depthLadder, thresholdOf } from '@shared/match/thresholds'
import { indexTide, shareWithin } from '@shared/match/tide-index'
import { strengthOf } from '@shared/match/bands'
import type { Water } from '@shared/schema/water'
import { dayMs } from '@shared/tides/signal'
import { predictWater, waterSeries } from '@shared/tides/predict-water'
import { bellinghamChannel, fridayHarbor } from '../fixtures/station-constants'

const constants = { tide: fridayHarbor, current: bellinghamChannel }
const fromMs = Date.UTC(2026, 0, 1)
const fiveMinutes = 300

const waterAt = (depthM: number): Water => ({
  format: 'potwright/water',
  version: 1,
  id: `w${depthM}`,
  name: 'Heron Narrows',
  depthM,
  tide: { source: 'station', id: 'noaa/9449880' },
  current: { source: 'station', id: 'noaa/PUG1741' },
})
const year = (depthM: number) =>
  waterSeries(waterAt(depthM), constants, { fromMs, toMs: fromMs + 365 * dayMs }, fiveMinutes)

describe('tides', () => {
  bench('one water for 30 days at five minutes, events and all (wanted: under 50 ms)', () => {
    predictWater(waterAt(12), constants, { fromMs, toMs: fromMs + 30 * dayMs }, fiveMinutes)
  })
})

describe('a year of 60 designs on 20 waters, 126 million cells (wanted: under 2 s)', () => {
  const depths = Array.from({ length: 20 }, (_, i) => 4 + 1.5 * i)
  const limits = Array.from({ length: 60 }, (_, i) => 0.3 + i / 50)

  const countAll = () => {
    let held = 0
    for (const depth of depths) {
      const series = year(depth)
      const ladder = depthLadder(depth - 2, depth + 5)
      const index = indexTide(series.depthM, strengthOf(series) ?? new Float64Array(), ladder)
      for (const limit of limits) {
        const holds = thresholdOf(ladder, (d) => limit * (1 + 0.01 * d))
        const shows = thresholdOf(ladder, (d) => limit * (1.6 - 0.02 * d))
        held += shareWithin(index, [holds]) + shareWithin(index, [shows]) + shareWithin(index, [holds, shows])
      }
    }
    return held
  }
  bench('predicted, sorted and counted', () => void countAll(), {
    iterations: 3,
    warmupIterations: 1,
    time: 0,
  })
})
