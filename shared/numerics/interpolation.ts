/**
 * Straight-line interpolation in a table of points.
 *
 * @param points x, y pairs with x rising; at least one
 * @param x      where to read; outside the table the nearest end holds
 * @returns y at x
 * @throws {RangeError} the table is empty
 */
export function interpolate(points: readonly (readonly [number, number])[], x: number): number {
  const first = points[0]
  if (!first) throw new RangeError('interpolate: the table is empty')
  let [x0, y0] = first
  if (x <= x0) return y0
  for (const [x1, y1] of points) {
    if (x <= x1) return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0)
    x0 = x1
    y0 = y1
  }
  return y0
}
