/** Length of the drawn rope above the surface, where a floating rope between weights in truth lies on it. */
export function lengthAbove(shape: readonly number[], depthM: number): number {
  let length = 0
  for (let i = 2; i + 1 < shape.length; i += 2) {
    const [x0 = 0, z0 = 0, x1 = 0, z1 = 0] = shape.slice(i - 2, i + 2)
    if (z0 + z1 > 2 * depthM + 1e-9) length += Math.hypot(x1 - x0, z1 - z0)
  }
  return length
}

/** Points from the float to the pot, x from the pot, none above the surface; none of a rope whose shape was not kept. */
export function pointsFromPot(
  shape: readonly number[],
  slackM: number,
  offsetM: number,
  depthM: number,
): Float64Array {
  const first = slackM > 0 && shape.length > 0 ? [offsetM, depthM] : []
  const points = new Float64Array(first.length + shape.length)
  points.set(first)
  for (let i = 0; i + 1 < shape.length; i += 2) {
    points[first.length + i] = (shape[i] ?? 0) + offsetM - slackM
    points[first.length + i + 1] = Math.min(depthM, shape[i + 1] ?? 0)
  }
  return points
}
