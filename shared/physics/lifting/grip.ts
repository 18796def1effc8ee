/** Rope from this on is easy on the hands [mm]. */
export const easyRopeMm = 8

/**
 * Pull by hand from which thin rope cuts into the hands [N], by rope diameter.
 *
 * 100 N up to 6 mm, none from 8 mm on, straight in between to 150 N.
 *
 * @param diameterMm rope diameter [mm], > 0
 * @returns pull [N]; infinite for rope that is easy to hold
 * @source common practice (from memory): hauling 6 mm rope by hand is uncomfortable above about 100 to 150 N, 8 to
 *   10 mm is preferred
 */
export function comfortablePull(diameterMm: number): number {
  if (diameterMm >= easyRopeMm) return Infinity
  return 100 + 25 * Math.max(0, diameterMm - 6)
}
