import type { TideConstants } from '@shared/schema/station'
import { harmonicSum } from './harmonic-sum'
import { retimed } from './retimed'
import { dayMs, minuteMs, type Signal } from './signal'
import { turningPoints } from './turning-points'

/** A tide that rises by less than this is no tide of its own [m]; tide tables draw the line at 1 to 3 cm. */
export const leastTideM = 0.01

/**
 * Height of the tide above chart datum at a station.
 *
 * Reference station: the harmonic sum. Subordinate station: the reference's curve, its high and low waters
 * moved by the published minutes and its heights by the published ratios or differences, in proportion between.
 *
 * @param tide   constants of the station, those of its reference included
 * @param fromMs start of the time that will be asked for [ms since 1970 UTC]
 * @param toMs   end of it [ms]
 * @returns height [m above the datum named in `tide`]
 * @source offsets as the U.S. tide tables define them (table 2: time differences, height ratios or
 *   differences applied to heights above the datum); curve between as in @neaps/tide-predictor
 */
export function heightSignal(tide: TideConstants, fromMs: number, toMs: number): Signal {
  const reference = harmonicSum(tide.constituents, tide.meanLevelM)
  const offsets = tide.offsets
  if (!offsets) return reference
  // Offsets reach hours at most; two days more on either side keep every moment between two turns.
  const turns = turningPoints(reference, fromMs - 2 * dayMs, toMs + 2 * dayMs, leastTideM)
  const levels = turns.map(({ value, high }) => {
    const change = high ? offsets.high : offsets.low
    return { reference: value, here: offsets.kind === 'ratio' ? value * change : value + change }
  })
  const anchors = turns.map(({ timeMs, high }) => ({
    referenceMs: timeMs,
    hereMs: timeMs + (high ? offsets.highMinutes : offsets.lowMinutes) * minuteMs,
    weight: 1,
  }))
  return retimed(reference, anchors, (value, segment, share) => {
    const from = levels[segment]
    const to = levels[segment + 1]
    if (!from || !to) return value
    const rise = to.reference - from.reference
    const part = rise === 0 ? share : (value - from.reference) / rise
    return from.here + part * (to.here - from.here)
  })
}
