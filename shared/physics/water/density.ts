/**
 * Density of sea water at the surface, equation of state EOS-80.
 *
 * ρ = ρ_f(T) + A(T) S + B(T) S^1.5 + 4.8314e-4 S², polynomials of the one-atmosphere equation of state.
 *
 * @param salinityPsu  salinity S [psu], 0 to 42
 * @param temperatureC temperature T [°C], -2 to 40
 * @returns density [kg/m³]
 * @source UNESCO Technical Papers in Marine Science 36 (1981) and 44 (1983)
 */
export function seaWaterDensityAt(salinityPsu: number, temperatureC: number): number {
  const s = salinityPsu
  const t = temperatureC
  const fresh =
    999.842594 +
    t * (6.793952e-2 + t * (-9.09529e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))))
  const linear = 0.824493 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)))
  const threeHalves = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6)
  return fresh + linear * s + threeHalves * s ** 1.5 + 4.8314e-4 * s * s
}
