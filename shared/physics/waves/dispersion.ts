import { gravity } from '@shared/physics/constants'

/**
 * Wave number of a linear wave in water of any depth.
 *
 * ω² = g k tanh(k h), by Newton's method from k0 = ω²/g / √(tanh(ω² h/g)), whose error is below 5 %; eight steps at
 * most, three give 1e-10.
 *
 * @param periodS wave period T [s], > 0
 * @param depthM  depth h [m], > 0
 * @returns wave number k [rad/m]
 * @throws {RangeError} period or depth not positive and finite
 * @source linear wave theory; Coastal Engineering Manual EM 1110-2-1100, Part II ch. 1 (2002)
 */
export function waveNumber(periodS: number, depthM: number): number {
  if (!(periodS > 0 && depthM > 0 && Number.isFinite(periodS) && Number.isFinite(depthM)))
    throw new RangeError(`waveNumber: period ${periodS} s and depth ${depthM} m must be positive`)
  const deep = (2 * Math.PI) ** 2 / (gravity * periodS ** 2)
  let k = deep / Math.sqrt(Math.tanh(deep * depthM))
  for (let i = 0; i < 8; i += 1) {
    const t = Math.tanh(k * depthM)
    const step = (k * t - deep) / (t + k * depthM * (1 - t * t))
    k -= step
    if (Math.abs(step) < 1e-14 * k) break
  }
  return k
}

/** Wave length L = 2π/k [m]; see `waveNumber`. */
export const waveLength = (periodS: number, depthM: number): number =>
  (2 * Math.PI) / waveNumber(periodS, depthM)

/** Speed at which the crest runs, L/T [m/s]; see `waveNumber`. */
export const waveCelerity = (periodS: number, depthM: number): number => waveLength(periodS, depthM) / periodS

/**
 * Depth over wave length from depth over deep-water wave length.
 *
 * d/L0 = (d/L) tanh(2π d/L)
 *
 * @param overDeepLength d/L0 [-], > 0
 * @returns d/L [-]
 * @throws {RangeError} not positive
 * @source linear wave theory; Shore Protection Manual 1984, Table C-1
 */
export function relativeDepth(overDeepLength: number): number {
  const depth = 1
  const deepLength = depth / overDeepLength
  return depth / waveLength(Math.sqrt((2 * Math.PI * deepLength) / gravity), depth)
}
