/** Reynolds numbers up to which the curve holds: below the drag crisis. */
export const sphereReynoldsLimit = 2e5

/**
 * Drag coefficient of a smooth sphere.
 *
 * Cd = 24/Re + 6/(1 + √Re) + 0.4
 *
 * @param reynolds Reynolds number on the diameter [-], > 0, below 2e5
 * @returns drag coefficient on the frontal area [-]
 * @throws {RangeError} Reynolds number not positive
 * @source White, Viscous Fluid Flow, curve fit
 */
export function sphereDrag(reynolds: number): number {
  if (!(reynolds > 0)) throw new RangeError(`sphereDrag: Reynolds number ${reynolds} must be positive`)
  return 24 / reynolds + 6 / (1 + Math.sqrt(reynolds)) + 0.4
}
