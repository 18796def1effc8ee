import { bracketUpwards } from '@shared/numerics/bracket'
import { brentRoot } from '@shared/numerics/brent-root'
import { hazard, meanLife, meanTimeInUse, survival, type Weibull } from './weibull'

/** What it costs to change a part in time, and what it costs when it fails in use (its pot may go with it). */
export interface ReplacementCosts {
  readonly planned: number
  readonly failure: number
}

/**
 * Cost per unit of time of replacing at an age, or at failure if that comes first.
 *
 * C(T) = (cp·R(T) + cf(1 − R(T)))/∫0..T R du
 *
 * @param life  Weibull life
 * @param costs planned cost cp and failure cost cf, same money
 * @param age   replacement age T, > 0
 * @returns money per unit of the ages
 * @source age replacement, Barlow & Proschan 1965, Mathematical Theory of Reliability (recalled)
 */
export function costRate(life: Weibull, costs: ReplacementCosts, age: number): number {
  const good = survival(life, age)
  return (costs.planned * good + costs.failure * (1 - good)) / meanTimeInUse(life, age)
}

/**
 * Cost per unit of time of replacing only at failure, cf/(mean life).
 *
 * @source as `costRate`, the age without bound
 */
export function costRateAtFailure(life: Weibull, costs: ReplacementCosts): number {
  return costs.failure / meanLife(life)
}

/**
 * Age at which replacing costs least over the long run.
 *
 * h(T)·∫0..T R du − (1 − R(T)) = cp/(cf − cp)
 *
 * @param life  Weibull life
 * @param costs planned and failure cost
 * @returns age in the unit of the scale, or undefined where replacing by age never pays: parts that do not
 *   wear out (shape ≤ 1), or a failure that costs no more than a planned change
 * @source as `costRate`
 */
export function bestReplacementAge(life: Weibull, costs: ReplacementCosts): number | undefined {
  if (life.shape <= 1 || costs.failure <= costs.planned) return undefined
  const target = costs.planned / (costs.failure - costs.planned)
  const balance = (age: number) =>
    hazard(life, age) * meanTimeInUse(life, age) - (1 - survival(life, age)) - target
  const bracket = bracketUpwards(balance, 0, life.scale / 4, 1000 * life.scale)
  return bracket && brentRoot(balance, bracket.from, bracket.to, bracket).root
}
