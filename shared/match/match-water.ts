import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import type { TimeSpan } from '@shared/tides/local-time'
import { extremesOf, waterSeries } from '@shared/tides/predict-water'
import { strengthOf } from './bands'
import { depthLadder } from './thresholds'
import { indexTide, type TideIndex } from './tide-index'

/** A water made ready to be matched with any number of designs. */
export interface MatchWater {
  readonly water: Water
  /** Strongest current and extreme heights over the time asked about. */
  readonly predicted: ReturnType<typeof extremesOf>
  /** Depths at which limits are worked out [m]. */
  readonly ladder: Float64Array
  /** Left out where no current is known. */
  readonly index: TideIndex | undefined
}

const stepS = 300

/**
 * Predicts a water at five-minute steps and sorts the moments for counting.
 *
 * @param water     the place
 * @param constants constants of the stations that it names
 * @param span      time asked about [ms since 1970 UTC], up to some years
 */
export function matchWater(water: Water, constants: WaterConstants, span: TimeSpan): MatchWater {
  const series = waterSeries(water, constants, span, stepS)
  const strength = strengthOf(series)
  const { depthM } = series
  const low = depthM.reduce((least, d) => Math.min(least, d), Infinity)
  const high = depthM.reduce((most, d) => Math.max(most, d), 0)
  const ladder = depthLadder(low, high)
  return {
    water,
    predicted: extremesOf(series),
    ladder,
    index: strength && indexTide(depthM, strength, ladder),
  }
}
