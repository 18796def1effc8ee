import type { TimeSpan } from '@shared/tides/local-time'
import type { WaterSeries } from '@shared/tides/predict-water'
import { limitAt, type Threshold } from './thresholds'

/**
 * Strength of the current at every sample, wind drift added.
 *
 * @returns |v| + drift [m/s], or undefined where no current is known
 */
export function strengthOf({ currentMps, driftMps }: WaterSeries): Float64Array | undefined {
  return currentMps?.map((mps) => Math.abs(mps) + driftMps)
}

/**
 * Times during which the current stays within every one of the thresholds.
 *
 * Ends are found on the straight line between two samples.
 *
 * @param series     depth and current at a water
 * @param thresholds limits of the pot there
 * @returns spans in order; none where no current is known
 */
export function bandsWithin(series: WaterSeries, thresholds: readonly Threshold[]): TimeSpan[] {
  const strength = strengthOf(series)
  if (!strength) return []
  const { fromMs, toMs, stepS, depthM } = series
  const timeAt = (i: number) => fromMs + i * stepS * 1000
  const bands: TimeSpan[] = []
  let since: number | undefined
  let before = NaN
  strength.forEach((mps, i) => {
    const margin = Math.min(...thresholds.map((threshold) => limitAt(threshold, depthM[i] ?? 0) - mps))
    const crossing = timeAt(i - 1 + before / (before - margin))
    if (margin >= 0) since ??= before < 0 ? crossing : timeAt(i)
    else if (since !== undefined) {
      bands.push({ fromMs: since, toMs: crossing })
      since = undefined
    }
    before = margin
  })
  if (since !== undefined) bands.push({ fromMs: since, toMs })
  return bands
}

/** Parts that two lists of spans have in common. */
export function overlap(a: readonly TimeSpan[], b: readonly TimeSpan[]): TimeSpan[] {
  return a.flatMap((one) =>
    b
      .map((two) => ({ fromMs: Math.max(one.fromMs, two.fromMs), toMs: Math.min(one.toMs, two.toMs) }))
      .filter(({ fromMs, toMs }) => toMs > fromMs),
  )
}
