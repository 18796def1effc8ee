/** Hours and days of a year, as corrosion and currents are reckoned. */
const daysPerMonth = 30.4

/**
 * Years until a zinc coat is gone, z/(f·sea + (1 − f)·air).
 *
 * @param zincUm       coat z [µm], > 0
 * @param seaUmPerYear loss in sea water [µm/y]
 * @param airUmPerYear loss in air [µm/y]
 * @param wetFraction  share of the time in the water f, 0-1
 * @returns years; worth nothing without the share assumed
 * @throws {RangeError} no loss at all
 * @source 15-25 µm/y in sea water, galvanizers' association basics sheet 2012, p. 22
 */
export function zincLifeYears(
  zincUm: number,
  seaUmPerYear: number,
  airUmPerYear: number,
  wetFraction: number,
): number {
  const loss = wetFraction * seaUmPerYear + (1 - wetFraction) * airUmPerYear
  if (!(loss > 0)) throw new RangeError('zincLifeYears: the loss a year must be positive')
  return zincUm / loss
}

/**
 * Metal lost in air over years, r·t^b.
 *
 * @param firstYearUm loss in the first year r [µm]
 * @param years       time t [y], ≥ 0
 * @param exponent    b: 0.813 zinc, 0.523 steel
 * @returns loss [µm]
 * @source ISO 9224:2012 (recalled)
 */
export function airLossUm(firstYearUm: number, years: number, exponent: number): number {
  return firstYearUm * years ** exponent
}

/** Share of a round bar's section left after a loss from its surface, ((d − 2·loss)/d)². */
export function barSectionLeft(diameterMm: number, lossMm: number): number {
  return (Math.max(0, diameterMm - 2 * lossMm) / diameterMm) ** 2
}

/**
 * Years until a round bar has a share of its section left, d(1 − √share)/(2r).
 *
 * @param diameterMm bar d [mm], > 0
 * @param mmPerYear  loss from the surface r [mm/y], > 0
 * @param share      share left, 0-1
 * @returns years; pits and welds go several times sooner
 * @throws {RangeError} diameter or rate not positive
 * @source even loss from the surface; 0.035-0.075 mm/y long term, cold-regions report LR-03-19
 */
export function yearsToSection(diameterMm: number, mmPerYear: number, share: number): number {
  if (!(diameterMm > 0 && mmPerYear > 0))
    throw new RangeError(`yearsToSection: diameter ${diameterMm} mm, rate ${mmPerYear} mm/y must be positive`)
  return (diameterMm * (1 - Math.sqrt(share))) / (2 * mmPerYear)
}

/** What an anode has to feed: bare steel for hours under water. */
export interface AnodeDuty {
  readonly areaM2: number
  readonly currentDensity: number
  /** Share of a coated surface that is bare c, 0-1. */
  readonly breakdown: number
  readonly hours: number
  readonly capacityAhPerKg: number
  readonly utilisation: number
}

/**
 * Zinc that an anode gives up, m = i·A·c·t/(Q·u).
 *
 * @param duty area A [m2], current density i [A/m2], bare share c, hours t, capacity Q [Ah/kg], share usable u
 * @returns zinc [kg]
 * @throws {RangeError} capacity or usable share not positive
 * @source Faraday balance; 0.1 A/m2, 780 Ah/kg and 0.8 recalled from cathodic-protection practice
 */
export function anodeMassKg(duty: AnodeDuty): number {
  if (!(duty.capacityAhPerKg > 0 && duty.utilisation > 0))
    throw new RangeError('anodeMassKg: capacity and usable share must be positive')
  return (
    (duty.currentDensity * duty.areaM2 * duty.breakdown * duty.hours) /
    (duty.capacityAhPerKg * duty.utilisation)
  )
}

/** Zinc lost in the first year in the harshest air of a class [µm/y]. */
export const zincFirstYearUpper = {
  C4: 4.2,
  C5: 8.4,
  source: 'ISO 9223 classes as reprinted in an offshore-structures textbook, Table 6.7',
} as const

/** Growth or loss a month from a total over days, with 30.4 days to the month. */
export function perMonth(total: number, days: number): number {
  return (total / days) * daysPerMonth
}
