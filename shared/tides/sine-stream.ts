import { rateOfTheDay, type RangeAndRate } from '@shared/physics/tide/rate-of-the-day'
import { hourMs, signalOf, type Signal } from './signal'
import type { TurningPoint } from './turning-points'

/**
 * A stream that runs as half sines between slacks, each slack a fixed time after high or low water and each run
 * as strong as the range of its own tide says.
 *
 * v(t) = ±R(range)·sin(π·(t − t₀)/(t₁ − t₀)), flood (positive) while the tide rises.
 *
 * @param turns  high and low waters, alternating, covering the time that will be asked for
 * @param spring range [m] and rate [m/s] at springs
 * @param neap   range and rate at neaps; zeros make the rate proportional to the range
 * @param lagH   hours by which slack follows high and low water, −6.5 … 6.5
 * @returns speed [m/s], zero outside the turns given
 * @source common practice (sine form; the 50/90 rule is its rounding); slack at high and low water holds for a
 *   standing tide only, hence the lag
 */
export function sineStream(
  turns: readonly TurningPoint[],
  spring: RangeAndRate,
  neap: RangeAndRate,
  lagH: number,
): Signal {
  const lag = lagH * hourMs
  const runs = turns.slice(1).map((to, i) => {
    const from = turns[i] ?? to
    return {
      fromMs: from.timeMs + lag,
      toMs: to.timeMs + lag,
      peak: rateOfTheDay(Math.abs(to.value - from.value), spring, neap) * (to.high ? 1 : -1),
    }
  })
  let last = 0
  return signalOf((timeMs) => {
    while (last > 0 && timeMs < (runs[last]?.fromMs ?? 0)) last--
    while (last < runs.length - 1 && timeMs >= (runs[last]?.toMs ?? 0)) last++
    const run = runs[last]
    if (!run || timeMs < run.fromMs || timeMs > run.toMs) return 0
    return run.peak * Math.sin((Math.PI * (timeMs - run.fromMs)) / (run.toMs - run.fromMs))
  })
}
