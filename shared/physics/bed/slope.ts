/**
 * Down-slope pull that a pot on a sloping bed still resists.
 *
 * F = W (μ cos β - sin β); negative when it slides by itself.
 *
 * @param wetWeightN submerged weight W [N]
 * @param friction   grip μ [-]
 * @param slopeRad   slope of the bed β, downwards along the current [rad]
 * @returns force [N]
 * @source statics of a body on an incline
 */
export function slopeHolding(wetWeightN: number, friction: number, slopeRad: number): number {
  return wetWeightN * (friction * Math.cos(slopeRad) - Math.sin(slopeRad))
}
