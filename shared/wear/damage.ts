/**
 * Strength left after a dose of sun, S = 0.5^(E/X).
 *
 * @param doseKly     dose while in the sun E [kLy], ≥ 0
 * @param halfDoseKly dose that halves the strength X [kLy], > 0
 * @returns share of the new strength
 * @source meaning of a rope maker's rating: not more than half lost after the rated dose
 */
export function sunlitStrength(doseKly: number, halfDoseKly: number): number {
  return 0.5 ** (doseKly / halfDoseKly)
}

/** What a part has been through, and what would halve its strength by each alone. */
export interface Damage {
  readonly doseKly: number
  readonly halfDoseKly: number
  readonly hauls: number
  readonly halfHauls: number
  readonly immersedDays: number
  readonly halfImmersedDays: number
}

/**
 * Halvings of strength by sun, hauls and time in the water together, D = E/X + hauls/H50 + days/I50.
 *
 * @param damage what it went through, each ≥ 0, and the half-lives, each > 0
 * @returns halvings; sun followed by chafe is in truth worse than this sum
 * @source independence of the three is assumed
 */
export function halvings(damage: Damage): number {
  return (
    damage.doseKly / damage.halfDoseKly +
    damage.hauls / damage.halfHauls +
    damage.immersedDays / damage.halfImmersedDays
  )
}

/** Share of the new strength left after a number of halvings. */
export function strengthAfter(halvingCount: number): number {
  return 0.5 ** halvingCount
}
