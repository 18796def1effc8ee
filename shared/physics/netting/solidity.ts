/**
 * Solidity of netting with square meshes, knotless or of welded wire.
 *
 * Sn = 2d/a - (d/a)², the outline of two bars a mesh less the crossing counted twice; 1 once the bars touch.
 *
 * @param twineDiameterM twine or coated wire diameter d [m], > 0
 * @param barLengthM     bar length a, half the stretched mesh [m], > 0
 * @returns solid share of the outline [-], 0 to 1
 * @throws {RangeError} a size not positive and finite
 * @source projected-area geometry; Fridman, Calculations for Fishing Gear Designs, FAO 1986, ch. 3 (form without
 *   the crossing)
 */
export function squareMeshSolidity(twineDiameterM: number, barLengthM: number): number {
  const k = slenderness(twineDiameterM, barLengthM)
  return k < 1 ? 2 * k - k * k : 1
}

/**
 * Solidity of square netting with knots about two twines across.
 *
 * Sn = 2d/a + 0.5 (d/a)², not above 1.
 *
 * @param twineDiameterM twine diameter d [m], > 0
 * @param barLengthM     bar length a [m], > 0
 * @returns solid share of the outline [-], 0 to 1
 * @throws {RangeError} a size not positive and finite
 * @source Fredheim 2005, as given in the review of Klebert et al. 2013, Ocean Eng. 58:260-274 (from memory)
 */
export function knottedMeshSolidity(twineDiameterM: number, barLengthM: number): number {
  const k = slenderness(twineDiameterM, barLengthM)
  return Math.min(1, 2 * k + 0.5 * k * k)
}

/**
 * Solidity of netting hung in diamonds.
 *
 * k = d/(a E1 E2) with E2 = √(1 - E1²), Sn = k - k²/4: one mesh has the outline 2a²E1E2 and owns two bars and one
 * crossing, a rhombus of area d²/(2 E1 E2). With E1 = 0.7071 it is the square mesh; 1 once the bars touch (k = 2).
 *
 * @param twineDiameterM twine diameter d [m], > 0
 * @param barLengthM     bar length a [m], > 0
 * @param hangingRatio   primary hanging ratio E1, hung width over stretched width [-], between 0 and 1
 * @returns solid share of the outline [-], 0 to 1
 * @throws {RangeError} a size not positive and finite, or a hanging ratio outside 0 to 1
 * @source projected-area geometry; Fridman, Calculations for Fishing Gear Designs, FAO 1986, ch. 3
 */
export function diamondMeshSolidity(
  twineDiameterM: number,
  barLengthM: number,
  hangingRatio: number,
): number {
  if (!(hangingRatio > 0 && hangingRatio < 1))
    throw new RangeError(`diamondMeshSolidity: hangingRatio=${hangingRatio} must lie between 0 and 1`)
  const k =
    slenderness(twineDiameterM, barLengthM) / (hangingRatio * Math.sqrt(1 - hangingRatio * hangingRatio))
  return k < 2 ? k - (k * k) / 4 : 1
}

function slenderness(twineDiameterM: number, barLengthM: number): number {
  const k = twineDiameterM / barLengthM
  if (!(twineDiameterM > 0 && barLengthM > 0 && Number.isFinite(k)))
    throw new RangeError(`solidity: twine ${twineDiameterM} m and bar ${barLengthM} m must be positive`)
  return k
}
