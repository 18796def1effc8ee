import normalCdf from '@stdlib/stats-base-dists-normal-cdf'
import normalQuantile from '@stdlib/stats-base-dists-normal-quantile'

/** Share of the new strength that is left, spread as log-normal. */
export interface StrengthBelief {
  readonly median: number
  /** Standard deviation of the natural logarithm, > 0. */
  readonly logSd: number
}

/**
 * Prediction corrected by an inspection: both are taken as log-normal and weighted by their sureness.
 *
 * w = 1/s²; ln S = (w0·ln S0 + w1·ln S1)/(w0 + w1); s = (w0 + w1)^−1/2
 *
 * @param predicted belief from use alone
 * @param inspected what the inspection says
 * @returns belief after the inspection
 * @throws {RangeError} a median or log-sd not positive
 * @source normal updating on the logarithm
 */
export function updateStrength(predicted: StrengthBelief, inspected: StrengthBelief): StrengthBelief {
  const all = [predicted.median, predicted.logSd, inspected.median, inspected.logSd]
  if (!all.every((x) => x > 0))
    throw new RangeError(`updateStrength: medians and log-sds ${all.join(', ')} must be positive`)
  const w0 = predicted.logSd ** -2
  const w1 = inspected.logSd ** -2
  const logMedian = (w0 * Math.log(predicted.median) + w1 * Math.log(inspected.median)) / (w0 + w1)
  return { median: Math.exp(logMedian), logSd: (w0 + w1) ** -0.5 }
}

/** Strength under which a share of the belief lies. */
export function strengthAt({ median, logSd }: StrengthBelief, share: number): number {
  return median * Math.exp(logSd * normalQuantile(share, 0, 1))
}

/**
 * Probability that the strength left is under a floor: Φ(ln(floor/median)/s).
 *
 * @param belief belief
 * @param floor  share of the new strength, > 0
 * @returns probability; say it to one figure only
 */
export function probabilityBelow({ median, logSd }: StrengthBelief, floor: number): number {
  return normalCdf(Math.log(floor / median), 0, logSd)
}

/** Time until the floor is reached: median and 80 % range, 0 where it may be reached already. */
export interface Remaining {
  readonly low: number
  readonly mid: number
  readonly high: number
}

/**
 * Time until a floor is reached at a steady rate of damage, log2(S/floor)/rate.
 *
 * @param belief belief now
 * @param floor  share of the new strength, > 0
 * @param halvingsPerMonth rate of damage [halvings/month], > 0
 * @returns months
 * @throws {RangeError} floor or rate not positive
 */
export function remainingMonths(belief: StrengthBelief, floor: number, halvingsPerMonth: number): Remaining {
  if (!(floor > 0 && halvingsPerMonth > 0))
    throw new RangeError(`remainingMonths: floor ${floor} and rate ${halvingsPerMonth} must be positive`)
  const until = (strength: number) => Math.max(0, Math.log2(strength / floor) / halvingsPerMonth)
  return {
    low: until(strengthAt(belief, 0.1)),
    mid: until(belief.median),
    high: until(strengthAt(belief, 0.9)),
  }
}
