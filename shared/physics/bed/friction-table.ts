/** Largest horizontal force over ground reaction for two materials: middle of the printed range. */
const frictionFactors: Readonly<Record<string, number>> = {
  'steel on clean gravel': 0.4,
  'steel on clean sand': 0.3,
  'steel on silty sand': 0.25,
  'steel on fine sandy silt': 0.2,
  'mass concrete on clean sound rock': 0.7,
  'mass concrete on clean gravel': 0.575,
  'mass concrete on clean sand': 0.5,
  'mass concrete on fine sand': 0.4,
  'mass concrete on silty sand': 0.5,
  'mass concrete on fine sandy silt': 0.325,
}

/** Pairs of materials in the table. */
export const frictionPairs: readonly string[] = Object.keys(frictionFactors)

/**
 * Friction factor of one material on another, tan δ, from a table for foundations.
 *
 * Approximate, and needs some movement to mobilise; a pot is neither smooth steel nor concrete, so the grip used for
 * pots lies between (see the coefficients).
 *
 * @param pair `steel on …` or `mass concrete on …`, one of `frictionPairs`
 * @returns friction factor [-]
 * @throws {RangeError} a pair that is not in the table
 * @source NAVFAC DM 7.02 (1986), Table 1, p. 7.2-63; steel rows as adapted in Carter & Bentley, Soil Properties and
 *   their Correlations, Table 11.1; ranges are given here by their middle
 */
export function frictionFactor(pair: string): number {
  const factor = frictionFactors[pair]
  if (factor === undefined) throw new RangeError(`frictionFactor: no figure for ${pair}`)
  return factor
}
