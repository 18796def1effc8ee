/**
 * Angle between two bearings, the short way round.
 *
 * @param a bearing [deg], 0-360
 * @param b bearing [deg], 0-360
 * @returns 0-180 [deg]
 */
export function angleApartDeg(a: number, b: number): number {
  const apart = Math.abs(a - b) % 360
  return apart > 180 ? 360 - apart : apart
}
