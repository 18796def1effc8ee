/** Reynolds numbers up to which the curve holds: below the drag crisis. */
export const cylinderReynoldsLimit = 2.33e5

/**
 * Drag coefficient of a long smooth cylinder across the flow.
 *
 * Re < 30: 1.45 + 8.55 Re^-0.9; from 30 on: 1.1 + 4 Re^-0.5.
 *
 * @param reynolds Reynolds number on the diameter [-], > 0, below 2.33e5
 * @returns drag coefficient on diameter times length [-]
 * @throws {RangeError} Reynolds number not positive
 * @source Choo & Casarella 1971, J. Hydronautics 5:126-131, as restated in Cheng et al. 2020, model M4
 */
export function cylinderDrag(reynolds: number): number {
  if (!(reynolds > 0)) throw new RangeError(`cylinderDrag: Reynolds number ${reynolds} must be positive`)
  return reynolds < 30 ? 1.45 + 8.55 * reynolds ** -0.9 : 1.1 + 4 / Math.sqrt(reynolds)
}
