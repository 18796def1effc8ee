/*
 * Shapes of a rope in a current that are known in closed form. They say how a line must come out in the limit, and
 * serve as checks of the solver.
 */

/** A straight line without weight or drag under a buoyant ball. */
export interface StraightLine {
  readonly offsetM: number
  readonly dipM: number
  readonly tensionN: number
}

/**
 * A float on a line without weight or drag.
 *
 * The line stands at φ = atan(D/B) from the vertical: offset L sin φ, dip L (1 - cos φ), tension √(D² + B²).
 *
 * @param lengthM   length of the line L [m]
 * @param buoyancyN net buoyancy B [N], > 0
 * @param dragN     drag of the float D [N], at least 0
 * @source balance of forces at the float
 */
export function straightLine(lengthM: number, buoyancyN: number, dragN: number): StraightLine {
  const angle = Math.atan2(dragN, buoyancyN)
  return {
    offsetM: lengthM * Math.sin(angle),
    dipM: lengthM * (1 - Math.cos(angle)),
    tensionN: Math.hypot(dragN, buoyancyN),
  }
}

/**
 * Neutral rope in a uniform stream with drag across it only: a catenary about the stream.
 *
 * Across the stream (T/F) asinh(F s/T), along it (T/F)(√(1 + (F s/T)²) - 1), tension constant.
 *
 * @param tensionN     tension T [N], > 0
 * @param normalDragNpm drag per metre where the rope is square to the stream F [N/m], > 0
 * @param arcM         length from that point s [m]
 * @returns distance across and along the stream [m]
 * @source derived from f_n = F sin² of the angle to the stream
 */
export function dragCatenary(
  tensionN: number,
  normalDragNpm: number,
  arcM: number,
): { acrossM: number; alongM: number } {
  const scale = tensionN / normalDragNpm
  const s = arcM / scale
  return { acrossM: scale * Math.asinh(s), alongM: scale * (Math.hypot(1, s) - 1) }
}

/**
 * Angle to the stream at which a long heavy rope runs straight.
 *
 * w cos a = F sin² a, so cos a = -w/2F + √((w/2F)² + 1)
 *
 * @param wetWeightNpm  weight in water per metre w [N/m], at least 0
 * @param normalDragNpm drag per metre square to the stream F [N/m], > 0
 * @returns angle [rad]
 * @source Pode 1951, DTMB 687; the same balance as Fridman, Calculations for Fishing Gear Designs, FAO 1986, eq. 5.23
 */
export function criticalAngle(wetWeightNpm: number, normalDragNpm: number): number {
  const half = wetWeightNpm / (2 * normalDragNpm)
  // The difference of two near equals, written so that no digits are lost for heavy rope.
  return Math.acos(1 / (half + Math.sqrt(half * half + 1)))
}
