import type { Bottom, Water } from '@shared/schema/water'

/** What the water does while a pot is down: the strongest current and the range of depth. SI units. */
export interface Conditions {
  /** Strongest surface current expected [m/s], wind drift included. */
  readonly surfaceCurrentMps: number
  /** Least and greatest depth over the tide [m]. */
  readonly depthLowM: number
  readonly depthHighM: number
  /** Where no tide is known the depths are the charted one; this names what would have to be known. */
  readonly missingTide?: string
  readonly bottom: Bottom | undefined
  readonly waves: { readonly heightM: number; readonly periodS: number } | undefined
  readonly temperatureC: number | undefined
  readonly salinityPsu: number | undefined
  /** Where the current comes from, for the finding's text. */
  readonly basis: string
}

/** What is missing before conditions can be known, as the trade says it. */
export type MissingConditions = { readonly missing: string }

// Surface drift of 2-3 % of the wind is common practice; the upper end is taken.
export const windDriftShare = 0.03

/**
 * Conditions from what a water states by itself: a typed current, or a spring rate with a range of tide.
 * What was predicted for the days in question (`extremesOf`) is passed in as `predicted` and goes before it.
 *
 * @param water     the place
 * @param predicted strongest current and extreme heights over those days, where they were predicted
 * @returns conditions, or what is missing
 */
export function conditionsAt(
  water: Water,
  predicted: { readonly currentMps?: number; readonly lowM?: number; readonly highM?: number } = {},
): Conditions | MissingConditions {
  const stream = strongestStream(water, predicted.currentMps)
  if (stream === undefined) return { missing: 'the current at this water' }
  const [lowM, highM] = tideExtremes(water, predicted)
  return {
    surfaceCurrentMps: stream.mps + windDriftShare * (water.windMps ?? 0),
    depthLowM: Math.max(0, water.depthM + lowM),
    depthHighM: water.depthM + highM,
    ...(tideKnown(water, predicted) ? {} : { missingTide: 'the tide at this water' }),
    bottom: water.bottom,
    waves: water.waves,
    temperatureC: water.temperatureC,
    salinityPsu: water.salinityPsu,
    basis: stream.basis,
  }
}

function strongestStream(
  water: Water,
  predictedMps: number | undefined,
): { mps: number; basis: string } | undefined {
  const current = water.current
  if (!current) return undefined
  if (current.source === 'fixed') return { mps: current.mps, basis: 'a current typed in' }
  if (current.source === 'rate')
    return predictedMps === undefined
      ? { mps: current.springMps, basis: 'the spring rate' }
      : { mps: predictedMps, basis: 'the rate typed in, scaled by the range on the days in question' }
  return predictedMps === undefined ? undefined : { mps: predictedMps, basis: 'predictions for the station' }
}

const tideKnown = (water: Water, predicted: { highM?: number }) =>
  water.tide?.source === 'range' || predicted.highM !== undefined

/** Heights above chart datum; without a tide the depth is taken as it stands. */
function tideExtremes(water: Water, predicted: { lowM?: number; highM?: number }): [number, number] {
  const springM = water.tide?.source === 'range' ? water.tide.springM : 0
  return [predicted.lowM ?? 0, predicted.highM ?? springM]
}
