/**
 * Girth of a crab's body taken as an ellipse, Ramanujan's second form.
 *
 * π(a + b)(1 + 3h/(10 + √(4 − 3h))), h = ((a − b)/(a + b))²
 *
 * @param lengthMm shell length, the long axis [mm], > 0
 * @param depthMm  shell depth, the short axis [mm], > 0
 * @returns girth [mm]
 * @source Ramanujan 1914, ellipse perimeter; the shape is an assumption
 */
export function crabGirth(lengthMm: number, depthMm: number): number {
  const a = lengthMm / 2
  const b = depthMm / 2
  const h = ((a - b) / (a + b)) ** 2
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)))
}

/**
 * Broken bars in a row that let a crab out: k = ceil((girth/bar − 4)/2).
 *
 * @param girthMm girth of the crab [mm], > 0
 * @param barMm   bar of the mesh [mm], > 0
 * @returns whole bars; 0 where it fits a whole mesh
 * @throws {RangeError} girth or bar not positive
 * @source a row of k broken bars opens a round of (2k + 4) bars
 */
export function barsThatLetOut(girthMm: number, barMm: number): number {
  if (!(girthMm > 0 && barMm > 0))
    throw new RangeError(`barsThatLetOut: girth ${girthMm} mm, bar ${barMm} mm must be positive`)
  return Math.max(0, Math.ceil((girthMm / barMm - 4) / 2))
}

/** Broken bars in a row at which to mend: one before a crab gets out, but at least one. */
export function barsToMendAt(girthMm: number, barMm: number): number {
  return Math.max(1, barsThatLetOut(girthMm, barMm) - 1)
}

/** Broken meshes a set of hoop nets with the thinnest twine, from trials; a fact, not a forecast. */
export const hoopNetBreaks = {
  twineMm: 0.5,
  perSet: 17.29,
  source: 'Broadhurst and others 2015, Fish. Manag. Ecol. 22:488-500 (abstract): 16.16-18.42',
} as const

/** Shares of the specified mesh strength at which to watch and to replace netting. */
export const nettingThresholds = {
  watch: 0.65,
  replace: 0.6,
  source: 'Marine fish-farm practice (recalled); nothing asks it of crab pots',
} as const
