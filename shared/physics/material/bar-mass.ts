/** Density of steel by which bar tables are printed [kg/m³]. */
export const steelDensity = 7850

/**
 * Mass per metre of round bar.
 *
 * m = ρ π d²/4
 *
 * @param diameterM bar diameter [m], at least 0
 * @param density   density [kg/m³]
 * @returns mass per metre [kg/m]
 * @source EN 10060; the printed bar tables agree
 */
export function barMass(diameterM: number, density = steelDensity): number {
  return (density * Math.PI * diameterM ** 2) / 4
}

/**
 * Weight in water as a share of weight in air.
 *
 * c = 1 - ρ_w/ρ; negative floats.
 *
 * @param density      density of the material [kg/m³], > 0
 * @param waterDensity density of the water [kg/m³]
 * @returns share [-]
 * @throws {RangeError} density not positive
 * @source Archimedes; reproduces the table of Prado & Dremiere, Fisherman's Workbook, FAO 1990
 */
export function submergedShare(density: number, waterDensity: number): number {
  if (!(density > 0)) throw new RangeError(`submergedShare: density ${density} kg/m3 must be positive`)
  return 1 - waterDensity / density
}
