/**
 * Rate at which a cord rots, from a loss over days: −ln(1 − loss)/days.
 *
 * @param loss share of the strength lost, 0 ≤ loss < 1
 * @param days days in the water, > 0
 * @returns rate [1/day]
 * @source 63 % in 124 days, cotton of 96 threads, Winger and others 2015, Fish. Res. 161:21-23 (abstract)
 */
export function rotRate(loss: number, days: number): number {
  return -Math.log1p(-loss) / days
}

/** Days in the water to half strength at a rate [1/day]. */
export function rotHalfLife(ratePerDay: number): number {
  return Math.LN2 / ratePerDay
}

/**
 * Rate at another temperature, k·Q^((T − T0)/10).
 *
 * @param ratePerDay   rate k at T0 [1/day]
 * @param referenceC   temperature T0 [°C]
 * @param temperatureC temperature T [°C]
 * @param q10          rise over 10 °C Q, 1.5-3
 * @returns rate [1/day]
 * @source both the rise and the temperature of the trial are assumptions
 */
export function rotRateAt(ratePerDay: number, referenceC: number, temperatureC: number, q10: number): number {
  return ratePerDay * q10 ** ((temperatureC - referenceC) / 10)
}

/**
 * Days in the water until a cord parts under a load, ln(S0/F)/k; 0 where it cannot carry it new.
 *
 * @param strengthN strength when new S0 [N], > 0
 * @param loadN     load F [N], > 0
 * @param ratePerDay rate k [1/day], > 0
 * @returns days; an order of size, never a date
 * @throws {RangeError} a figure not positive
 * @source exponential loss
 */
export function daysToPart(strengthN: number, loadN: number, ratePerDay: number): number {
  if (!(strengthN > 0 && loadN > 0 && ratePerDay > 0))
    throw new RangeError('daysToPart: strength, load and rate must be positive')
  return Math.max(0, Math.log(strengthN / loadN) / ratePerDay)
}
