import gammainc from '@stdlib/math-base-special-gammainc'
import gammaln from '@stdlib/math-base-special-gammaln'
import cdf from '@stdlib/stats-base-dists-weibull-cdf'
import quantile from '@stdlib/stats-base-dists-weibull-quantile'

/** Lives spread as Weibull: the shape has no unit, the scale is in the unit of the ages. */
export interface Weibull {
  /** Shape β, > 0; above 1 parts wear out, at 1 they fail by chance. */
  readonly shape: number
  /** Scale η, > 0: age by which 63 % have failed. */
  readonly scale: number
}

/**
 * Share still good at an age, R(t) = exp(−(t/η)^β).
 *
 * @param life Weibull life
 * @param age  age, ≥ 0, in the unit of the scale
 * @returns share, 0-1
 */
export function survival(life: Weibull, age: number): number {
  return 1 - cdf(age, life.shape, life.scale)
}

/**
 * Share of those good at an age that are still good after a further time: R(t + x)/R(t).
 *
 * R(x|t) = exp((t/η)^β − ((t + x)/η)^β)
 *
 * @param life    Weibull life
 * @param age     age now, ≥ 0
 * @param further time ahead, ≥ 0
 * @returns share, 0-1
 */
export function survivalFrom(life: Weibull, age: number, further: number): number {
  const { shape, scale } = life
  return Math.exp((age / scale) ** shape - ((age + further) / scale) ** shape)
}

/** Age by which a share has failed. */
export function ageAtShareFailed(life: Weibull, share: number): number {
  return quantile(share, life.shape, life.scale)
}

/** Failure rate at an age, h(t) = (β/η)(t/η)^(β−1), per unit of the ages. */
export function hazard({ shape, scale }: Weibull, age: number): number {
  return (shape / scale) * (age / scale) ** (shape - 1)
}

/**
 * Mean time in use of a part that is taken out at an age if it has not failed, ∫0..T R du.
 *
 * (η/β)·γ(1/β, (T/η)^β), γ the lower incomplete gamma function
 *
 * @param life Weibull life
 * @param age  age T at which it is taken out, ≥ 0
 * @returns mean time, in the unit of the scale
 */
export function meanTimeInUse({ shape, scale }: Weibull, age: number): number {
  return (scale / shape) * gammainc((age / scale) ** shape, 1 / shape, false)
}

/** Mean life, η·Γ(1 + 1/β), in the unit of the scale. */
export function meanLife({ shape, scale }: Weibull): number {
  return scale * Math.exp(gammaln(1 + 1 / shape))
}
