import { brentRoot } from '@shared/numerics/brent-root'
import type { Weibull } from './weibull'

/** Ages at which parts failed, and ages of parts that have not failed yet or were taken out good. */
export interface LifeRecord {
  readonly failed: readonly number[]
  readonly survived: readonly number[]
}

/**
 * Weibull shape and scale that make a record of lives most likely, with lives not yet ended.
 *
 * The shape solves Σ t^β·ln t/Σ t^β − 1/β − mean(ln t failed) = 0, sums over all lives; η = (Σ t^β/r)^(1/β), r failures.
 *
 * @param record ages, > 0, in one unit
 * @returns the fit, or undefined with fewer than two different failure ages
 * @throws {RangeError} an age not positive and finite
 * @source maximum likelihood under right censoring; Lieblein & Zelen 1956, J. Res. Natl. Bur. Stand. 57:273-316
 *   for the complete sample
 */
export function fitWeibull({ failed, survived }: LifeRecord): Weibull | undefined {
  const all = [...failed, ...survived]
  if (!all.every((age) => age > 0 && Number.isFinite(age)))
    throw new RangeError('fitWeibull: ages must be positive and finite')
  if (new Set(failed).size < 2) return undefined
  // Ages over the greatest, so that high powers stay finite.
  const unit = Math.max(...all)
  const scaled = all.map((age) => age / unit)
  const meanLogFailed = failed.reduce((sum, age) => sum + Math.log(age / unit), 0) / failed.length
  const score = (shape: number) => {
    let powers = 0
    let weighted = 0
    for (const age of scaled) {
      const power = age ** shape
      powers += power
      weighted += power * Math.log(age)
    }
    return weighted / powers - 1 / shape - meanLogFailed
  }
  const [low, high] = [1e-3, 1e3]
  if (score(high) <= 0) return undefined
  const shape = brentRoot(score, low, high).root
  const powers = scaled.reduce((sum, age) => sum + age ** shape, 0)
  return { shape, scale: unit * (powers / failed.length) ** (1 / shape) }
}

/**
 * Log likelihood of a record under a Weibull life: Σ failed ln f(t) + Σ survived ln R(t).
 *
 * @returns log likelihood, comparable between lives for one record
 */
export function logLikelihood({ failed, survived }: LifeRecord, { shape, scale }: Weibull): number {
  const atFailure = failed.reduce(
    (sum, age) => sum + Math.log(shape / scale) + (shape - 1) * Math.log(age / scale),
    0,
  )
  const outlived = [...failed, ...survived].reduce((sum, age) => sum + (age / scale) ** shape, 0)
  return atFailure - outlived
}
