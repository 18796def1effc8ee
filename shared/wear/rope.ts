/**
 * Section left after a loss of diameter, (1 − d)². Strength falls faster where one strand takes the loss.
 *
 * @param diameterLoss share of the diameter lost d, 0-1
 * @returns share of the section
 */
export function sectionLeft(diameterLoss: number): number {
  return (1 - diameterLoss) ** 2
}

/** Mass left after time in the water at a steady loss, 1 − loss·months: shares. */
export function massLeft(lossPerMonth: number, months: number): number {
  return Math.max(0, 1 - lossPerMonth * months)
}

/**
 * Share of its new strength that a rope must still have, DF·F/(knot·break load).
 *
 * @param peakN        greatest load F [N], > 0
 * @param designFactor DF, 5-12
 * @param knotFactor   share of the strength that the knots leave, 0-1
 * @param breakingN    break load when new [N], > 0
 * @returns share; above 1 the rope was never strong enough
 * @throws {RangeError} a figure not positive
 * @source knots up to half and factors 5-12, CI 1401-06 as reprinted by a rope seller
 */
export function requiredShare(
  peakN: number,
  designFactor: number,
  knotFactor: number,
  breakingN: number,
): number {
  if (![peakN, designFactor, knotFactor, breakingN].every((x) => x > 0))
    throw new RangeError('requiredShare: load, factor, knot share and break load must be positive')
  return (designFactor * peakN) / (knotFactor * breakingN)
}

/** Share to keep where load or break load is not known; an assumption. */
export const requiredShareUnknown = 0.5

/** Loss of diameter at which a fibre rope is retired [%]; the strictest general rule found. */
export const retireDiameterLossPct = 5

export const ropeGrades = [0, 1, 2, 3, 4] as const
export type RopeGrade = (typeof ropeGrades)[number]

/** What each grade of an inspection looks like, and the strength it stands for; grade 4 is discarded. */
export const ropeGradeLooks: Record<
  RopeGrade,
  { look: string; strength?: { median: number; logSd: number } }
> = {
  0: { look: 'As new', strength: { median: 0.95, logSd: 0.06 } },
  1: { look: 'Light, even fuzz', strength: { median: 0.85, logSd: 0.12 } },
  2: {
    look: 'Heavy fuzz, colour lost, still supple, under 3 % of the diameter gone',
    strength: { median: 0.65, logSd: 0.25 },
  },
  3: {
    look: '3 to 5 % of the diameter gone, stiff or flat, or a little powder',
    strength: { median: 0.45, logSd: 0.35 },
  },
  4: { look: 'Any reason to discard it' },
}

/** When a rope is discarded at sight; use the strictest line for its construction. */
export const ropeDiscardRules: readonly { readonly what: string; readonly source: string }[] = [
  {
    what: 'More than 5 % of the diameter gone over a length',
    source: 'Oil-industry mooring equipment guidelines, 2nd ed. (scan, digits damaged)',
  },
  {
    what: 'One strand worn through by more than 10 to 15 %',
    source: 'Oil-industry mooring equipment guidelines, 2nd ed.; trade figure 10 % for three-strand',
  },
  {
    what: 'A cut strand, or more than 10 % of cover strands cut',
    source: 'Oil-industry mooring equipment guidelines, 2nd ed.; small-boat line care note',
  },
  { what: 'Glazed or hard patches', source: 'Rope trade inspection page' },
  { what: 'Powder between the strands', source: 'Oil-industry mooring equipment guidelines, 2nd ed.' },
]
