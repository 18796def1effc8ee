import { gravity } from '@shared/physics/constants'
import { waveNumber } from './dispersion'

/** A regular wave. */
export interface Wave {
  readonly heightM: number
  readonly periodS: number
}

/** Motion of the water under a wave. */
export interface WaveMotion {
  readonly horizontalMps: number
  readonly verticalMps: number
  readonly horizontalMps2: number
  readonly verticalMps2: number
}

/** Height over depth at which a wave breaks. */
const breakingRatio = 0.78

/** Height over length at which a wave breaks in deep water. */
const breakingSteepness = 0.142

/**
 * The wave's height, no more than the water can carry.
 *
 * H ≤ 0.78 h and H ≤ 0.142 L tanh(2π h/L)
 *
 * @param wave   height and period
 * @param depthM depth h [m], > 0
 * @returns height [m]
 * @throws {RangeError} period or depth not positive
 * @source depth: Coastal Engineering Manual EM 1110-2-1100, Part II (2002); steepness: Miche 1944 (from memory)
 */
export function unbrokenHeight(wave: Wave, depthM: number): number {
  const k = waveNumber(wave.periodS, depthM)
  const steepest = (breakingSteepness * 2 * Math.PI * Math.tanh(k * depthM)) / k
  return Math.min(wave.heightM, breakingRatio * depthM, steepest)
}

/**
 * Motion of the water at any level under a linear wave.
 *
 * u = (g H T/2L) cosh(k(z+h))/cosh(kh) cos θ, w with sinh and sin; a_x = (g π H/L) cosh(k(z+h))/cosh(kh) sin θ,
 * a_z = -(g π H/L) sinh(k(z+h))/cosh(kh) cos θ.
 *
 * @param wave      height H [m] and period T [s]
 * @param depthM    depth h [m], > 0
 * @param zM        level from still water, negative down [m], -h to 0
 * @param phaseRad  phase θ [rad], 0 under the crest
 * @returns speeds [m/s] and accelerations [m/s²], x along the wave, z up
 * @throws {RangeError} period or depth not positive
 * @source Coastal Engineering Manual EM 1110-2-1100, Part II ch. 1 (2002); H < 0.78 h
 */
export function waveMotion(wave: Wave, depthM: number, zM: number, phaseRad: number): WaveMotion {
  const k = waveNumber(wave.periodS, depthM)
  const speed = (gravity * wave.heightM * wave.periodS * k) / (4 * Math.PI)
  const acceleration = (gravity * wave.heightM * k) / 2
  const across = Math.cosh(k * (zM + depthM)) / Math.cosh(k * depthM)
  const upright = Math.sinh(k * (zM + depthM)) / Math.cosh(k * depthM)
  return {
    horizontalMps: speed * across * Math.cos(phaseRad),
    verticalMps: speed * upright * Math.sin(phaseRad),
    horizontalMps2: acceleration * across * Math.sin(phaseRad),
    verticalMps2: -acceleration * upright * Math.cos(phaseRad),
  }
}

/**
 * Half the to-and-fro of the water at the bed.
 *
 * A = H/(2 sinh kh)
 *
 * @returns semi-excursion [m]
 * @throws {RangeError} period or depth not positive
 * @source Coastal Engineering Manual EM 1110-2-1100, Part II ch. 1 (2002)
 */
export function bedExcursion(wave: Wave, depthM: number): number {
  return wave.heightM / (2 * Math.sinh(waveNumber(wave.periodS, depthM) * depthM))
}

/**
 * Greatest speed of the water to and fro close to the bed.
 *
 * u_b = π H/(T sinh kh), at height z times cosh kz.
 *
 * @param wave   height and period
 * @param depthM depth h [m], > 0
 * @param zM     height above the bed [m], small against the depth
 * @returns amplitude of the orbital speed [m/s]
 * @throws {RangeError} period or depth not positive
 * @source Coastal Engineering Manual EM 1110-2-1100, Part II ch. 1 (2002)
 */
export function bedOrbitalSpeed(wave: Wave, depthM: number, zM = 0): number {
  const k = waveNumber(wave.periodS, depthM)
  return (Math.PI * wave.heightM * Math.cosh(k * zM)) / (wave.periodS * Math.sinh(k * depthM))
}
