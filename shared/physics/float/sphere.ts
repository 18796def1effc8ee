/**
 * Draft of a sphere that displaces a volume.
 *
 * Root of π y² (3R - y)/3 = v, in closed form: y = R + 2R cos((2π - arccos(1 - 3v/2πR³))/3).
 *
 * @param radiusM  radius R [m], > 0
 * @param volumeM3 displaced volume v [m³]; below 0 counts as 0, above the sphere's as the whole sphere
 * @returns draft y [m], 0 to 2R
 * @source volume of the spherical cap
 */
export function sphereDraft(radiusM: number, volumeM3: number): number {
  const cosine = 1 - (3 * volumeM3) / (2 * Math.PI * radiusM ** 3)
  if (cosine >= 1) return 0
  if (cosine <= -1) return 2 * radiusM
  return radiusM + 2 * radiusM * Math.cos((2 * Math.PI - Math.acos(cosine)) / 3)
}

/**
 * Side area of the immersed part of a sphere: a circular segment of height y.
 *
 * A = R² arccos((R - y)/R) - (R - y) √(2Ry - y²)
 *
 * @param radiusM radius R [m], > 0
 * @param draftM  draft y [m], 0 to 2R
 * @returns area [m²]
 * @source geometry of the circular segment
 */
export function sphereSideArea(radiusM: number, draftM: number): number {
  const dry = radiusM - Math.min(2 * radiusM, Math.max(0, draftM))
  return radiusM ** 2 * Math.acos(dry / radiusM) - dry * Math.sqrt(Math.max(0, radiusM ** 2 - dry ** 2))
}
