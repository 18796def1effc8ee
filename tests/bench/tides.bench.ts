import { bench, describe } from 'vitest'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { potLimits, type LimitMemo } from '@shared/match/pot-limits'
import { depthLadder } from '@shared/match/thresholds'
import { indexTide, shareWithin } from '@shared/match/tide-index'
import { strengthOf } from '@shared/match/bands'
import type { Water } from '@shared/schema/water'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { conditionsAt } from '@shared/tides/conditions'
import { dayMs } from '@shared/tides/signal'
import { extremesOf, predictWater, waterSeries } from '@shared/tides/predict-water'
import { bellinghamChannel, fridayHarbor } from '../fixtures/station-constants'

const constants = { tide: fridayHarbor, current: bellinghamChannel }
const fromMs = Date.UTC(2026, 0, 1)
const fiveMinutes = 300

const waterAt = (depthM: number): Water => ({
  format: 'potwright/water',
  version: 1,
  id: `w${depthM}`,
  name: 'Heron Narrows',
  bottom: 'sand',
  depthM,
  tide: { source: 'station', id: 'noaa/9449880' },
  current: { source: 'station', id: 'noaa/PUG1741' },
})
describe('tides', () => {
  bench('one water for 30 days at five minutes, events and all (wanted: under 50 ms)', () => {
    predictWater(waterAt(12), constants, { fromMs, toMs: fromMs + 30 * dayMs }, fiveMinutes)
  })
})

describe('a year of 60 designs on 20 waters, 126 million cells (wanted: under 2 s)', () => {
  const waters = Array.from({ length: 20 }, (_, i) => waterAt(4 + 1.5 * i))
  const designs = Array.from({ length: 12 }, (_, i) => 6 + i).flatMap((bar) =>
    starterPots.map((pot) => ({
      ...pot,
      frame: pot.frame?.map((member) =>
        member.role === 'base-ring' ? { ...member, barDiameterMm: bar } : member,
      ),
    })),
  )

  /** Each water of the year, sorted so that limits can be counted against it. */
  const places = () =>
    waters.map((water) => {
      const series = waterSeries(water, constants, { fromMs, toMs: fromMs + 365 * dayMs }, fiveMinutes)
      const { lowM = 0, highM = 0 } = extremesOf(series)
      const ladder = depthLadder(water.depthM + lowM, water.depthM + highM)
      const index = indexTide(series.depthM, strengthOf(series) ?? new Float64Array(), ladder)
      return { ladder, index, conditions: conditionsAt(water, extremesOf(series)) }
    })

  const limitsOf = (all: ReturnType<typeof places>) =>
    designs.map((pot) => {
      const memo: LimitMemo = new Map()
      return all.map(({ ladder, conditions }) =>
        potLimits(
          { pot, materials: builtInMaterials, coefficients: defaultCoefficients, conditions },
          'cautious',
          ladder,
          memo,
        ),
      )
    })

  function countAll(all: ReturnType<typeof places>, limits: ReturnType<typeof limitsOf>): number {
    let held = 0
    for (const design of limits)
      for (const [at, { holds, shows }] of design.entries()) {
        const index = all[at]?.index
        if (!index || !holds || !shows) throw new Error('a limit is missing')
        held += shareWithin(index, [holds]) + shareWithin(index, [shows]) + shareWithin(index, [holds, shows])
      }
    return held
  }

  const known = limitsOf(places())
  const rarely = { iterations: 3, warmupIterations: 1, time: 0 }
  bench('predicted, sorted and counted against known limits', () => void countAll(places(), known), rarely)
  bench(
    'the limits of the 60 designs worked out as well',
    () => {
      const all = places()
      countAll(all, limitsOf(all))
    },
    rarely,
  )
})
