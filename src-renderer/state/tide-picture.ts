import { potLimits, type PotLimits } from '@shared/match/pot-limits'
import { depthLadder } from '@shared/match/thresholds'
import { potWindows, type PotWindows } from '@shared/match/windows'
import type { Pot } from '@shared/schema/pot'
import type { WaterConstants } from '@shared/schema/station'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import { daylight } from '@shared/tides/daylight'
import type { TimeSpan } from '@shared/tides/local-time'
import { positionOf } from '@shared/tides/place'
import { extremesOf, predictWater, waterDays, type WaterPrediction } from '@shared/tides/predict-water'
import { ok, type Result } from '@shared/units/result'
import type { Tables } from './figures.svelte'

/** What is asked of a water: some days, and whether a pot does its work there. */
export interface TideQuestion {
  readonly water: Water
  readonly constants: WaterConstants
  /** First day by the water's own clock, `2026-12-05`. */
  readonly day: string
  /** 1 … 30. */
  readonly days: number
  readonly pot?: Pot | undefined
  readonly trip?: Trip | undefined
  readonly soakH: number
  /** Windows that are over by then are not recommended. */
  readonly nowMs?: number
  readonly tables: Tables
}

export interface TidePicture {
  readonly water: Water
  readonly prediction: WaterPrediction
  /** Empty where the place's position is not known. */
  readonly light: readonly TimeSpan[]
  readonly lightKnown: boolean
  readonly pot:
    | {
        readonly design: Pot
        readonly limits: PotLimits
        readonly windows: PotWindows
        readonly soakH: number
      }
    | undefined
}

/** Fine enough for the eye and the ends of bands; a month gets fewer points than a day. */
const stepFor = (days: number) => (days <= 3 ? 300 : 600)

/** Height, current, light and the pot's bands and windows over some days at a water. */
export function tidePicture(question: TideQuestion): Result<TidePicture> {
  const { water, constants, day, days, pot, trip, soakH, tables } = question
  const span = waterDays(water, constants, day, days)
  if (!span.ok) return span
  const prediction = predictWater(water, constants, span.value, stepFor(days))
  const position = positionOf(water, constants)
  const light = position ? daylight(span.value, prediction.zone, position) : []
  const limits = pot && limitsAt(pot, trip, water, prediction, tables)
  return ok({
    water,
    prediction,
    light,
    lightKnown: position !== undefined,
    pot: pot &&
      limits && {
        design: pot,
        limits,
        windows: potWindows(prediction, limits, light, soakH, question.nowMs),
        soakH,
      },
  })
}

/** Cautious limits of a pot over the depths of a prediction. */
function limitsAt(
  pot: Pot,
  trip: Trip | undefined,
  water: Water,
  prediction: WaterPrediction,
  tables: Tables,
): PotLimits {
  const extremes = extremesOf(prediction)
  const { lowM = 0, highM = 0 } = extremes
  const input = {
    pot,
    ...tables,
    conditions: conditionsAt(water, extremes),
    ...(trip && { trip }),
  }
  return potLimits(input, 'cautious', depthLadder(water.depthM + lowM, water.depthM + highM))
}
