import type { Hold } from './factors'

/** Mass to put on the base ring so that a pot holds. */
export interface RingNeeded {
  /** Mass of metal to add [kg]; 0 when it holds as it is. */
  readonly addedMassKg: number
  /** Which of the two asked for more. */
  readonly governedBy: 'sliding' | 'tipping' | 'nothing'
}

/**
 * Mass to add low on a pot so that it neither slides nor tips at the loads given.
 *
 * Sliding: μ (W + ΔW - L - V) = SF (F + H); tipping: (W + ΔW) b = SF (F z_c + (L + V) x + H z_t). The larger ΔW counts, and
 * Δm = ΔW/(g (1 - ρ_w/ρ)). A thicker ring also catches more water: solve the pot again to see.
 *
 * @param hold           forces and arms as they are
 * @param factorWanted   factor to reach [-], 1 to hold just so
 * @param metalDensity   density of the ring [kg/m³], above that of water
 * @param waterDensity   density of the water [kg/m³]
 * @param gravity        acceleration of gravity [m/s²]
 * @returns mass to add [kg]; `undefined` where no mass helps: no grip, no arm, or a metal that floats
 * @source statics of a rigid body
 */
export function ringMassNeeded(
  hold: Hold,
  factorWanted: number,
  metalDensity: number,
  waterDensity: number,
  gravity: number,
): RingNeeded | undefined {
  const share = 1 - waterDensity / metalDensity
  const slope = hold.slopeRad ?? 0
  const gripPerN = hold.friction * Math.cos(slope) - factorWanted * Math.sin(slope)
  if (!(share > 0 && gripPerN > 0 && hold.edgeArmM > 0)) return undefined
  const up = Math.max(0, hold.liftN) + Math.max(0, hold.ropeUpliftN)
  const slideWeight = (factorWanted * (hold.dragN + hold.ropeHorizontalN) + hold.friction * up) / gripPerN
  const overturning = hold.dragMomentNm + up * hold.upliftArmM + hold.ropeHorizontalN * hold.bridleHeightM
  const tipWeight = (factorWanted * overturning) / (hold.edgeArmM * Math.cos(slope))
  const short = Math.max(slideWeight, tipWeight) - hold.wetWeightN
  if (short <= 0) return { addedMassKg: 0, governedBy: 'nothing' }
  return {
    addedMassKg: short / (gravity * share),
    governedBy: slideWeight >= tipWeight ? 'sliding' : 'tipping',
  }
}
