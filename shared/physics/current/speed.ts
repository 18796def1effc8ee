import { powerLawExponent, vonKarman } from '@shared/physics/constants'
import type { CurrentProfile } from './profile'

/** Roughness length where a logarithmic profile is asked for without one: rippled sand, the roughest open bottom. */
const defaultRoughnessM = 0.006

/** Water shallower than this has no profile [m]. */
const shallowestM = 1e-6

/**
 * Speed of the current at a height above the bed.
 *
 * power: u = u_s (z/h)^(1/7); log: u = u_s ln(z/z0)/ln(h/z0), 0 below z0; uniform: u_s. Above the surface the
 * surface speed holds, below the bed there is none.
 *
 * @param profile shape of the profile, surface speed and depth
 * @param zM      height above the bed [m]
 * @returns speed [m/s], at least 0
 * @source seventh-root profile (Soulsby 1997, Dynamics of Marine Sands, ch. 3); logarithmic law, same chapter
 */
export function speedAt(profile: CurrentProfile, zM: number): number {
  const { surfaceCurrentMps, depthM } = profile
  if (profile.profile === 'uniform' || zM >= depthM || depthM < shallowestM) return surfaceCurrentMps
  if (zM <= 0) return 0
  if (profile.profile === 'power') return surfaceCurrentMps * (zM / depthM) ** powerLawExponent
  const z0 = roughnessWithin(profile)
  return zM <= z0 ? 0 : (surfaceCurrentMps * Math.log(zM / z0)) / Math.log(depthM / z0)
}

/** Roughness length of a logarithmic profile, kept well under the depth so that the law has meaning. */
export function roughnessWithin(profile: CurrentProfile): number {
  return Math.min(profile.z0M ?? defaultRoughnessM, profile.depthM / 30)
}

/**
 * Speed at one height from the speed at another, logarithmic law.
 *
 * u = u_r ln(z/z0)/ln(z_r/z0), for use below about a fifth of the depth.
 *
 * @param speedMps      speed at the reference height [m/s]
 * @param referenceZM   reference height [m], above z0
 * @param zM            height asked for [m]
 * @param roughnessM    roughness length z0 [m], > 0
 * @returns speed [m/s]; 0 at and below z0
 * @throws {RangeError} roughness not positive, or reference height not above it
 * @source Soulsby 1997, Dynamics of Marine Sands, ch. 3
 */
export function logLawSpeed(speedMps: number, referenceZM: number, zM: number, roughnessM: number): number {
  if (!(roughnessM > 0 && referenceZM > roughnessM))
    throw new RangeError(`logLawSpeed: z0=${roughnessM} m must be positive and below ${referenceZM} m`)
  return zM <= roughnessM ? 0 : (speedMps * Math.log(zM / roughnessM)) / Math.log(referenceZM / roughnessM)
}

/**
 * Speed at a height from the depth-mean speed.
 *
 * u = Um (z/(0.32 h))^(1/7) in the lower half, 1.07 Um above.
 *
 * @param meanMps depth-mean speed Um [m/s]
 * @param depthM  depth h [m], > 0
 * @param zM      height above the bed [m], at least 0
 * @returns speed [m/s]
 * @throws {RangeError} depth not positive
 * @source Soulsby 1990; Soulsby 1997, Dynamics of Marine Sands, ch. 3 (from memory)
 */
export function speedFromDepthMean(meanMps: number, depthM: number, zM: number): number {
  if (!(depthM > 0)) throw new RangeError(`speedFromDepthMean: depth ${depthM} m must be positive`)
  if (zM >= 0.5 * depthM) return 1.07 * meanMps
  return meanMps * (Math.max(0, zM) / (0.32 * depthM)) ** powerLawExponent
}

/**
 * Friction velocity from the depth-mean speed.
 *
 * u* = 0.40 Um/(ln(h/z0) - 1)
 *
 * @param meanMps    depth-mean speed Um [m/s]
 * @param depthM     depth h [m], above e·z0
 * @param roughnessM roughness length z0 [m], > 0
 * @returns friction velocity [m/s]
 * @throws {RangeError} depth not above e·z0
 * @source logarithmic law integrated over the depth; Soulsby 1997, Dynamics of Marine Sands, ch. 3
 */
export function frictionVelocity(meanMps: number, depthM: number, roughnessM: number): number {
  if (!(roughnessM > 0 && depthM > Math.E * roughnessM))
    throw new RangeError(`frictionVelocity: depth ${depthM} m is too small for z0=${roughnessM} m`)
  return (vonKarman * meanMps) / (Math.log(depthM / roughnessM) - 1)
}
