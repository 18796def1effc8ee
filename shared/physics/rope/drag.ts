import { interpolate } from '@shared/numerics/interpolation'

const straightRope = [
  [0, 0.12],
  [10, 0.2],
  [20, 0.32],
  [30, 0.41],
  [40, 0.56],
  [50, 0.7],
  [60, 0.9],
  [70, 1.12],
  [80, 1.25],
  [90, 1.3],
] as const

/**
 * Drag coefficient of a straight rope at an angle to the flow, measured: the high bound for rope lying over.
 *
 * F = Cx L d ρ V²/2 along the flow; straight lines between the tabulated angles.
 *
 * @param angleDeg angle between rope and flow [deg], 0 to 90
 * @returns Cx [-]
 * @source Fridman, Calculations for Fishing Gear Designs, FAO 1986, Table 3.3 p. 64 (values at second hand)
 */
export function straightRopeDrag(angleDeg: number): number {
  return interpolate(straightRope, angleDeg)
}

/** Scope below which a rope is taken as taut, and above which as slack [-]; judgement. */
const tautScope = 1.05
const slackScope = 1.3

/**
 * Drag coefficient across a rope, between that of taut rope, which hums, and that of slack rope.
 *
 * Straight between a rope 1.05 times the depth (taut) and 1.3 times (slack).
 *
 * @param slackCdn coefficient of slack rope [-]
 * @param tautCdn  coefficient of taut rope [-]
 * @param lengthM  rope length [m]
 * @param heightM  height the rope spans [m]
 * @returns coefficient on diameter times length [-]
 * @source Blevins, Flow-Induced Vibration, for taut rope (from memory); the blend is judgement
 */
export function ropeNormalDrag(slackCdn: number, tautCdn: number, lengthM: number, heightM: number): number {
  const scope = heightM > 0 ? lengthM / heightM : slackScope
  const slackness = Math.min(1, Math.max(0, (scope - tautScope) / (slackScope - tautScope)))
  return tautCdn + (slackCdn - tautCdn) * slackness
}

const strouhal = 0.2

/**
 * Frequency at which a rope hums across a current.
 *
 * f = 0.2 U/d
 *
 * @param speedMps  speed across the rope [m/s]
 * @param diameterM rope diameter [m], > 0
 * @returns frequency [Hz]
 * @throws {RangeError} diameter not positive
 * @source Blevins, Flow-Induced Vibration (Strouhal number 0.2)
 */
export function strummingFrequency(speedMps: number, diameterM: number): number {
  if (!(diameterM > 0)) throw new RangeError(`strummingFrequency: diameter ${diameterM} m must be positive`)
  return (strouhal * speedMps) / diameterM
}

/**
 * Factor on the drag across a rope that hums with an amplitude.
 *
 * 1 + 2.1 A/d; A/d is 0.3 to 0.8 in taut rope.
 *
 * @param amplitudeOverDiameter A/d [-], at least 0
 * @returns factor [-]
 * @source Blevins, Flow-Induced Vibration (from memory)
 */
export function strummingAmplification(amplitudeOverDiameter: number): number {
  return 1 + 2.1 * amplitudeOverDiameter
}

/**
 * Measured drag of towed rope gear: a check on the order of magnitude only.
 *
 * D = 8.67 + 0.47 L + 39.26 f + 0.01 L f, mean over 0.77, 1.3 and 2.1 m/s and depths of 0, 3 and 6 m.
 *
 * @param ropeLengthM rope length L [m]
 * @param hasFloat    whether floats were on it (f = 1)
 * @returns drag [N]
 * @source van der Hoop et al. 2016, Mar. Mamm. Sci. 32:619-642
 */
export function towedGearDrag(ropeLengthM: number, hasFloat: boolean): number {
  return 8.67 + 0.47 * ropeLengthM + (hasFloat ? 39.26 + 0.01 * ropeLengthM : 0)
}
