import gammaQuantile from '@stdlib/stats-base-dists-gamma-quantile'
import type { LifeRecord } from './weibull-fit'

/** What is believed of a kind of part: shape fixed, η^−β spread as Gamma(failures, exposure). */
export interface LifeBelief {
  readonly shape: number
  /** Failures that the belief is worth a. */
  readonly failures: number
  /** Sum of ages to the power β behind them b. */
  readonly exposure: number
}

/**
 * Belief before the user's own record, worth a few failures at a usual scale.
 *
 * b0 = a0·η^β
 *
 * @param shape    shape β, > 0
 * @param scale    usual scale η, > 0
 * @param failures failures it is worth a0, > 0
 * @returns belief
 * @source conjugate prior for the Weibull scale at fixed shape
 */
export function priorBelief(shape: number, scale: number, failures: number): LifeBelief {
  return { shape, failures, exposure: failures * scale ** shape }
}

/**
 * Belief after a record: each failure counts one, every age adds its power. Parts taken out good count as
 * survived, not as failed.
 *
 * a = a0 + r, b = b0 + Σ t^β
 *
 * @param prior  belief before
 * @param record ages in the unit of the prior's scale
 * @returns belief
 */
export function learn(prior: LifeBelief, { failed, survived }: LifeRecord): LifeBelief {
  const exposure = [...failed, ...survived].reduce((sum, age) => sum + age ** prior.shape, prior.exposure)
  return { shape: prior.shape, failures: prior.failures + failed.length, exposure }
}

/**
 * Share expected to be good at an age, the scale being uncertain: R(t) = (b/(b + t^β))^a.
 *
 * @param belief belief
 * @param age    age, ≥ 0
 * @returns share, 0-1
 */
export function predictedSurvival({ shape, failures, exposure }: LifeBelief, age: number): number {
  return (exposure / (exposure + age ** shape)) ** failures
}

/**
 * Scale η with its 80 % range under a belief.
 *
 * @returns scale at the mean of η^−β, and the tenth and ninetieth hundredths of η, in the unit of the ages
 */
export function scaleRange({ shape, failures, exposure }: LifeBelief): {
  low: number
  mid: number
  high: number
} {
  const scaleAt = (rate: number) => rate ** (-1 / shape)
  return {
    low: scaleAt(gammaQuantile(0.9, failures, exposure)),
    mid: scaleAt(failures / exposure),
    high: scaleAt(gammaQuantile(0.1, failures, exposure)),
  }
}
