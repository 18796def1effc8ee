/**
 * Mass of square-mesh netting.
 *
 * m = 2 · Rtex · 1e-6 / a, two bars to each mesh of area a².
 *
 * @param rtexGPerKm linear density of the twine [g/km], at least 0
 * @param barLengthM bar length a [m], > 0
 * @param knotFactor added for knots [-], 1 knotless, 1.1 to 1.2 knotted
 * @returns mass per outline area [kg/m²]
 * @throws {RangeError} bar length not positive
 * @source form of the netting-weight formula in Prado & Dremiere, Fisherman's Workbook, FAO 1990 (from memory)
 */
export function squareNettingMass(rtexGPerKm: number, barLengthM: number, knotFactor = 1): number {
  if (!(barLengthM > 0))
    throw new RangeError(`squareNettingMass: bar length ${barLengthM} m must be positive`)
  return (2 * rtexGPerKm * 1e-6 * knotFactor) / barLengthM
}
