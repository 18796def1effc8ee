/** A lift as the equation asks for it. */
export interface Lift {
  /** Hands from the ankles [cm]. */
  readonly reachCm: number
  /** Hands above the floor at the start [cm]. */
  readonly heightCm: number
  /** Height lifted [cm]. */
  readonly travelCm: number
  /** Turn of the trunk [deg]. */
  readonly twistDeg: number
  /** How often, from the manual's table [-]. */
  readonly frequencyFactor: number
  /** How good the grip, from the manual's table [-]. */
  readonly gripFactor: number
}

/**
 * Recommended mass for a lift, revised equation of NIOSH.
 *
 * RWL = 23 · (25/H) · (1 - 0.003|V - 75|) · (0.82 + 4.5/D) · (1 - 0.0032 A) · FM · CM; reach below 25 cm counts as 25,
 * travel below 25 cm as 25; 0 beyond 63 cm of reach, 175 cm of height or 135° of twist.
 *
 * Not meant for a moving deck: take a load above it as a reason to use a hauler.
 *
 * @returns mass [kg], at least 0
 * @source Waters, Putz-Anderson & Garg, Applications Manual for the Revised NIOSH Lifting Equation, NIOSH 94-110
 *   (1994, rev. 2021); the twist term from memory
 */
export function recommendedLift(lift: Lift): number {
  const { reachCm, heightCm, travelCm, twistDeg } = lift
  if (reachCm > 63 || heightCm > 175 || twistDeg > 135) return 0
  const reach = 25 / Math.max(25, reachCm)
  const height = 1 - 0.003 * Math.abs(heightCm - 75)
  const travel = Math.min(1, 0.82 + 4.5 / Math.max(25, travelCm))
  const twist = 1 - 0.0032 * twistDeg
  return 23 * reach * height * travel * twist * lift.frequencyFactor * lift.gripFactor
}
