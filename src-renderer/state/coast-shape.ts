/** One island or continent: rings of points x, y in Mercator on a globe of radius 1, y down. */
export interface CoastShape {
  /** Least x, least y, greatest x, greatest y. */
  readonly bounds: readonly [number, number, number, number]
  readonly fine: readonly Float32Array[]
  /** Thinned for the whole world; no rings for what is too small to see there. */
  readonly coarse: readonly Float32Array[]
}
