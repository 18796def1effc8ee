import { geoArea, geoMercator, geoPath } from 'd3-geo'
import { feature } from 'topojson-client'
import type { Position } from 'geojson'
import type { GeometryCollection, Topology } from 'topojson-specification'
// As text: read at run time it is parsed many times faster than as a script, and the type checker is spared it.
import landText from 'world-atlas/land-10m.json?raw'
import type { CoastShape } from './coast-shape'

/*
 * The land of the world in Mercator, made once: rings of points for each island and continent, fine and coarse, so
 * that the map only has to stroke and fill them.
 */

// A twelfth of a degree, in radians: a quarter of a pixel where the coarse shapes are shown.
const coarseness = 0.0015

class Recorder {
  #rings: number[][] = []
  moveTo = (x: number, y: number) => void this.#rings.push([x, y])
  lineTo = (x: number, y: number) => void this.#rings.at(-1)?.push(x, y)
  closePath = () => undefined
  beginPath = () => undefined
  arc = () => undefined
  take(): number[][] {
    const rings = this.#rings
    this.#rings = []
    return rings
  }
}

function shapes(): CoastShape[] {
  const topology = JSON.parse(landText) as Topology<{ land: GeometryCollection }>
  const recorder = new Recorder()
  const path = geoPath(geoMercator().scale(1).translate([0, 0]).precision(0), recorder)
  const made: CoastShape[] = []
  for (const { geometry } of feature(topology, topology.objects.land).features) {
    const polygons =
      geometry.type === 'MultiPolygon'
        ? geometry.coordinates
        : geometry.type === 'Polygon'
          ? [geometry.coordinates]
          : []
    for (const coordinates of polygons) {
      if (isInsideOut(coordinates)) continue
      path({ type: 'Polygon', coordinates })
      const rings = recorder.take()
      if (rings.length > 0) made.push(shapeOf(rings))
    }
  }
  return made
}

/** A sliver of a few points may be wound the wrong way, which reads as all the world but itself. */
function isInsideOut(coordinates: Position[][]): boolean {
  return (coordinates[0]?.length ?? 0) < 8 && geoArea({ type: 'Polygon', coordinates }) > 2 * Math.PI
}

function shapeOf(rings: readonly number[][]): CoastShape {
  const bounds: [number, number, number, number] = [Infinity, Infinity, -Infinity, -Infinity]
  for (const ring of rings)
    for (let i = 0; i < ring.length; i += 2) {
      const [x, y] = [ring[i] ?? 0, ring[i + 1] ?? 0]
      bounds[0] = Math.min(bounds[0], x)
      bounds[1] = Math.min(bounds[1], y)
      bounds[2] = Math.max(bounds[2], x)
      bounds[3] = Math.max(bounds[3], y)
    }
  return {
    bounds,
    fine: rings.map((ring) => Float32Array.from(ring)),
    coarse: rings.map(thinned).filter((ring) => ring.length >= 6),
  }
}

/** A ring without the points that lie closer to the last one kept than can be seen. */
function thinned(ring: readonly number[]): Float32Array {
  const kept: number[] = []
  let [lastX, lastY] = [Infinity, Infinity]
  for (let i = 0; i < ring.length; i += 2) {
    const [x, y] = [ring[i] ?? 0, ring[i + 1] ?? 0]
    if (Math.hypot(x - lastX, y - lastY) < coarseness) continue
    kept.push(x, y)
    ;[lastX, lastY] = [x, y]
  }
  return Float32Array.from(kept)
}

self.postMessage(shapes())
