/**
 * Uniform current at which a pot without a rope starts to slide.
 *
 * U = √(2 μ W/(ρ (CdA + μ ClA)))
 *
 * @param friction     grip μ [-]
 * @param wetWeightN   submerged weight W [N]
 * @param dragAreaM2   drag area CdA [m²]
 * @param liftAreaM2   lift area ClA [m²]
 * @param waterDensity density of the water [kg/m³]
 * @returns speed [m/s]
 * @throws {RangeError} neither drag nor lift area
 * @source statics of a rigid body
 */
export function plainSlideCurrent(
  friction: number,
  wetWeightN: number,
  dragAreaM2: number,
  liftAreaM2: number,
  waterDensity: number,
): number {
  const area = positive(dragAreaM2 + friction * liftAreaM2)
  return Math.sqrt((2 * friction * wetWeightN) / (waterDensity * area))
}

/**
 * Uniform current at which a pot without a rope starts to tip.
 *
 * U = √(2 W b/(ρ (CdA z_c + ClA b_l)))
 *
 * @param wetWeightN   submerged weight W [N]
 * @param edgeArmM     arm b from the centre of gravity to the ground edge [m]
 * @param dragMomentM3 drag area times its height, CdA z_c [m³]
 * @param liftMomentM3 lift area times its arm, ClA b_l [m³]
 * @param waterDensity density of the water [kg/m³]
 * @returns speed [m/s]
 * @throws {RangeError} neither drag nor lift moment
 * @source statics of a rigid body
 */
export function plainTipCurrent(
  wetWeightN: number,
  edgeArmM: number,
  dragMomentM3: number,
  liftMomentM3: number,
  waterDensity: number,
): number {
  const moment = positive(dragMomentM3 + liftMomentM3)
  return Math.sqrt((2 * wetWeightN * edgeArmM) / (waterDensity * moment))
}

function positive(loading: number): number {
  if (!(loading > 0)) throw new RangeError(`a pot without drag area (${loading}) has no critical current`)
  return loading
}
