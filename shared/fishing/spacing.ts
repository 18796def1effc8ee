/**
 * How far down-current a pot draws crabs in a time: the scent goes out, the crab walks back, R = T/(1/U + 1/v).
 *
 * @param currentMps   current U [m/s], > 0
 * @param crabSpeedMps walking speed v [m/s], > 0
 * @param timeS        time T [s], ≥ 0
 * @returns reach [m]; past 100 m no scent can be counted on
 * @throws {RangeError} a speed not positive
 * @source walking speed back-calculated from Hill & Wassenberg 1999, Fish. Res. 41:37-46 (abstract, spanner crab)
 */
export function scentReach(currentMps: number, crabSpeedMps: number, timeS: number): number {
  if (!(currentMps > 0 && crabSpeedMps > 0))
    throw new RangeError(
      `scentReach: current ${currentMps} and walking speed ${crabSpeedMps} must be positive`,
    )
  return timeS / (1 / currentMps + 1 / crabSpeedMps)
}

/**
 * Overlap of two equal circles as a share of one, (2/π)(acos x − x√(1 − x²)), x = d/2R.
 *
 * @param radiusM  radius R [m], > 0
 * @param spacingM distance of the centres d [m], ≥ 0
 * @returns share, 0-1
 * @source lens of two circles
 */
export function overlapShare(radiusM: number, spacingM: number): number {
  const x = spacingM / (2 * radiusM)
  if (x >= 1) return 0
  return (2 / Math.PI) * (Math.acos(x) - x * Math.sqrt(1 - x * x))
}

/**
 * Clear water left between two pots whose floats swing towards each other.
 *
 * @param spacingM distance of the pots [m]
 * @param swingM   how far each float swings from above its pot [m]
 * @returns distance of the floats at the worst [m]; negative where they can meet
 */
export function floatClearance(spacingM: number, swingM: number): number {
  return spacingM - 2 * swingM
}
