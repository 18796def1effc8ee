/** How fast the water runs at each height above the bed. */
export interface CurrentProfile {
  /** `power`: u ~ z^(1/7), `log`: law of the wall, `uniform`: the same at all heights. */
  readonly profile: 'power' | 'uniform' | 'log'
  /** Speed at the surface [m/s], at least 0. */
  readonly surfaceCurrentMps: number
  /** Depth of the water [m], at least 0. */
  readonly depthM: number
  /** Roughness length of the bed for `log` [m]; see `bedRoughness`. */
  readonly z0M?: number
}
