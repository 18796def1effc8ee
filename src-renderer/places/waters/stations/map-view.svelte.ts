import { geoMercator } from 'd3-geo'

export interface MapBounds {
  readonly west: number
  readonly south: number
  readonly east: number
  readonly north: number
}

/** Mercator with the globe's radius for its unit, as the coast is drawn in. */
const mercator = geoMercator().scale(1).translate([0, 0])

const FURTHEST = 60
const CLOSEST = 60_000
const northernmost = 82

/** Where the map looks, and how close: pixels for a radian at the equator. */
export class MapView {
  width = $state(560)
  height = $state(420)
  /** Centre in units of the projection. */
  x = $state(0)
  y = $state(0)
  scale = $state(100)

  constructor(longitudeDeg = -60, latitudeDeg = 25, scale = 95) {
    ;[this.x, this.y] = mercator([longitudeDeg, latitudeDeg]) ?? [0, 0]
    this.scale = scale
  }

  /** Pixels of a position on the map. */
  at(longitudeDeg: number, latitudeDeg: number): [number, number] {
    const [x, y] = mercator([longitudeDeg, latitudeDeg]) ?? [0, 0]
    return [(x - this.x) * this.scale + this.width / 2, (y - this.y) * this.scale + this.height / 2]
  }

  /** Longitude and latitude under a pixel. */
  under(px: number, py: number): [number, number] {
    const point: [number, number] = [
      this.x + (px - this.width / 2) / this.scale,
      this.y + (py - this.height / 2) / this.scale,
    ]
    return mercator.invert?.(point) ?? [0, 0]
  }

  bounds(): MapBounds {
    const [west, north] = this.under(0, 0)
    const [east, south] = this.under(this.width, this.height)
    const wide = this.width / this.scale >= 2 * Math.PI
    return {
      west: wide ? -180 : clamp(west, -180, 180),
      east: wide ? 180 : clamp(east, -180, 180),
      south: clamp(south, -90, 90),
      north: clamp(north, -90, 90),
    }
  }

  pan(dx: number, dy: number): void {
    const edge = mercator([180, northernmost]) ?? [Math.PI, -3]
    this.x = clamp(this.x - dx / this.scale, -edge[0], edge[0])
    this.y = clamp(this.y - dy / this.scale, edge[1], -edge[1])
  }

  /** Zooms by a factor with the point under a pixel staying where it is. */
  zoom(factor: number, px = this.width / 2, py = this.height / 2): void {
    const next = clamp(this.scale * factor, FURTHEST, CLOSEST)
    const shift = 1 / this.scale - 1 / next
    this.x += (px - this.width / 2) * shift
    this.y += (py - this.height / 2) * shift
    this.scale = next
  }

  goTo(longitudeDeg: number, latitudeDeg: number, closer = 9000): void {
    ;[this.x, this.y] = mercator([longitudeDeg, latitudeDeg]) ?? [this.x, this.y]
    this.scale = Math.max(this.scale, closer)
  }
}

const clamp = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value))
