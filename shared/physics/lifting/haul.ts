import { gravity } from '@shared/physics/constants'

/** Tangential drag coefficient of rope pulled through the water along itself, on diameter times length. */
const ropeAlongCd = 0.02

/** A pot on its way up through the water. */
export interface Haul {
  readonly wetWeightN: number
  /** Drag area of the pot seen from above, Cd·A [m²]. */
  readonly planDragAreaM2: number
  /** Speed of the pot through the water [m/s], the boat's heave included. */
  readonly speedMps: number
  readonly ropeWetWeightNpm: number
  readonly ropeLengthM: number
  readonly ropeDiameterM: number
  readonly waterDensity: number
}

/**
 * Pull on the rope while a pot is hauled straight up through still water.
 *
 * F = W + ½ρ CdA v² + w L + ½ρ Cdt d L v², Cdt = 0.02.
 *
 * @returns force [N]
 * @source steady balance of forces
 */
export function haulingPull(haul: Haul): number {
  const pressure = 0.5 * haul.waterDensity * haul.speedMps ** 2
  const ropeArea = ropeAlongCd * haul.ropeDiameterM * haul.ropeLengthM
  return (
    haul.wetWeightN + pressure * (haul.planDragAreaM2 + ropeArea) + haul.ropeWetWeightNpm * haul.ropeLengthM
  )
}

/**
 * Greatest speed of the rope when hauling from a boat that heaves with the waves.
 *
 * v = v_haul + π H/T
 *
 * @param haulMps     speed of hauling [m/s]
 * @param waveHeightM wave height [m]
 * @param periodS     wave period [s], > 0
 * @returns speed [m/s]
 * @throws {RangeError} period not positive
 * @source vertical speed of a boat that follows the surface, linear wave theory
 */
export function heavingSpeed(haulMps: number, waveHeightM: number, periodS: number): number {
  if (!(periodS > 0)) throw new RangeError(`heavingSpeed: period ${periodS} s must be positive`)
  return haulMps + (Math.PI * waveHeightM) / periodS
}

/**
 * Pull as a pot leaves the water: buoyancy is gone and water still drains from it. Usually the peak.
 *
 * F = k g (m_pot + m_catch + m_water)
 *
 * @param potKg   dry mass of pot, ballast and bait [kg]
 * @param catchKg mass of the catch [kg]
 * @param waterKg water, mud and weed that come along [kg]
 * @param jerk    factor for the boat's motion [-], 1.3 to 2
 * @returns force [N]
 * @source statics; the factor is judgement
 */
export function leavingWaterPull(potKg: number, catchKg: number, waterKg: number, jerk: number): number {
  return jerk * gravity * (potKg + catchKg + waterKg)
}
