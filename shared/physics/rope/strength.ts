/** Rope fibres with a table of strength. */
export type RopeFibre = 'PP' | 'PE' | 'PA' | 'PES'

/** Diameter [mm] and breaking strength [kN]. */
type Row = readonly [number, number]

const handbook: Readonly<Record<RopeFibre, readonly Row[]>> = {
  PP: [
    [4, 2.4],
    [6, 5.4],
    [8, 9.4],
    [10, 14],
    [12, 19.9],
    [14, 27.4],
  ],
  PE: [
    [4, 2],
    [6, 3.9],
    [8, 6.7],
    [10, 9.9],
    [12, 14.2],
    [14, 19],
  ],
  PA: [
    [4, 3.1],
    [6, 7.4],
    [8, 13.2],
    [10, 20.4],
    [12, 29.4],
    [14, 40.2],
  ],
  PES: [
    [4, 2.9],
    [6, 5.5],
    [8, 10],
    [10, 15.6],
    [12, 22.3],
    [14, 31],
  ],
}

const lowerPolypropylene: readonly Row[] = [
  [6, 5],
  [8, 7.61],
  [10, 10.8],
  [12, 16.8],
]

/**
 * Breaking strength of new three-strand rope, the lower of the tables at hand.
 *
 * Between printed diameters it runs straight in d²; beyond the ends it grows with d². Polypropylene takes the lower,
 * more cautious table; the handbook figures lie up to a quarter above it.
 *
 * @param fibre      what it is made of
 * @param diameterMm rope diameter [mm], > 0; tables run from 4 (polypropylene 6) to 14
 * @returns breaking strength [kN]
 * @throws {RangeError} diameter not positive
 * @source Prado & Dremiere, Fisherman's Workbook, FAO 1990 (from memory); polypropylene: engineeringtoolbox.com,
 *   polypropylene rope strength
 */
export function ropeBreakingStrength(fibre: RopeFibre, diameterMm: number): number {
  if (!(diameterMm > 0)) throw new RangeError(`ropeBreakingStrength: diameter ${diameterMm} mm`)
  return strengthFrom(fibre === 'PP' ? lowerPolypropylene : handbook[fibre], diameterMm)
}

/** Breaking strength by the handbook table alone [kN]; see `ropeBreakingStrength`. */
export function handbookStrength(fibre: RopeFibre, diameterMm: number): number {
  return strengthFrom(handbook[fibre], diameterMm)
}

function strengthFrom(table: readonly Row[], diameterMm: number): number {
  const square = diameterMm ** 2
  let below: Row = [0, 0]
  for (const row of table) {
    if (diameterMm <= row[0]) {
      const low = below[0] ** 2
      return below[1] + ((row[1] - below[1]) * (square - low)) / (row[0] ** 2 - low)
    }
    below = row
  }
  return (below[1] * square) / below[0] ** 2
}

/** What takes strength off a rope. */
export interface RopeState {
  /** Strength left at the knot or splice [-]. */
  readonly knot: number
  /** Strength left by age, sun and chafe [-], 1 new. */
  readonly age: number
  /** Strength left when wet [-], below 1 for nylon. */
  readonly wet: number
}

/**
 * Load a rope may carry in use.
 *
 * P = strength · knot · age · wet / safety factor
 *
 * @param breaking     breaking strength of new rope, any unit of force
 * @param safetyFactor strength wanted over load [-], > 0; 5 to 12
 * @param state        what takes strength off
 * @returns safe load in the same unit
 * @throws {RangeError} safety factor not positive
 * @source cordage guidelines, factor 5 to 12 (from memory); the table of engineeringtoolbox.com divides by 12
 */
export function ropeSafeLoad(breaking: number, safetyFactor: number, state?: RopeState): number {
  if (!(safetyFactor > 0)) throw new RangeError(`ropeSafeLoad: safety factor ${safetyFactor}`)
  const left = state ? state.knot * state.age * state.wet : 1
  return (breaking * left) / safetyFactor
}

/** Strength left at a knot or splice [-]: middle of the range. Source: trade handbooks (from memory). */
export const knotStrength = {
  'eye splice': 0.9,
  'figure-eight': 0.75,
  bowline: 0.65,
  'clove hitch': 0.65,
  reef: 0.475,
} as const
