import type { Bottom } from '@shared/schema/water'
import { CanvasTexture, Color, RepeatWrapping, SRGBColorSpace } from 'three'
import { createRandom, noiseSquare } from './noise'
import { bedColours } from './palette'

/* The bottom, drawn once a kind: its height gives the colour and the shading. All of them tile. */

const size = 512
/** Side of one tile on the bottom [m]. */
export const bedTileM = 1.1

/** A place on the tile, 0 to 1 each way, and what three noises are there: broad, middling and fine. */
interface Place {
  u: number
  v: number
  swell: number
  lumps: number
  grit: number
}

type Height = (place: Place) => number

function ripples({ u, swell, lumps, grit }: Place): number {
  const phase = 9 * u + 0.55 * swell
  const crest = 0.5 + 0.5 * Math.sin(2 * Math.PI * phase)
  return 0.75 * crest ** 1.6 + 0.12 * grit + 0.13 * lumps
}

/** Nearest and second nearest of scattered points, wrapping; pebbles and slabs are cut from these. */
function createCells(count: number, seed: number): (u: number, v: number) => [number, number, number] {
  const random = createRandom(seed)
  const side = Math.round(Math.sqrt(count))
  const points = Array.from({ length: side * side }, (_, k) => ({
    x: ((k % side) + 0.15 + 0.7 * random()) / side,
    y: (Math.floor(k / side) + 0.15 + 0.7 * random()) / side,
    tone: random(),
  }))
  return (u, v) => {
    let first = 9
    let second = 9
    let tone = 0
    const column = Math.floor(u * side)
    const row = Math.floor(v * side)
    for (let dy = -2; dy <= 2; dy++) {
      for (let dx = -2; dx <= 2; dx++) {
        const cx = (column + dx + side) % side
        const cy = (row + dy + side) % side
        const point = points[cy * side + cx]
        if (!point) continue
        const gapX = Math.abs(point.x - u)
        const gapY = Math.abs(point.y - v)
        const away = Math.hypot(Math.min(gapX, 1 - gapX), Math.min(gapY, 1 - gapY)) * side
        if (away < first) {
          second = first
          first = away
          tone = point.tone
        } else if (away < second) second = away
      }
    }
    return [first, second, tone]
  }
}

const pebbles = createCells(1600, 31)
const slabs = createCells(30, 47)

function gravel({ u, v, grit }: Place): number {
  const [first, second, tone] = pebbles(u, v)
  const dome = Math.min(1, (second - first) * 2.2) ** 0.5
  return 0.1 + dome * (0.42 + 0.4 * tone) + 0.08 * grit
}

function rock({ u, v, lumps }: Place): number {
  const bent = 0.06 * (lumps - 0.5)
  const [first, second, tone] = slabs((u + bent + 1) % 1, (v + bent + 1) % 1)
  const crack = Math.min(1, (second - first) * 5)
  return 0.12 + 0.4 * crack + 0.22 * tone + 0.3 * lumps * crack
}

const heights: Record<Bottom, Height> = {
  mud: ({ swell, lumps }) => 0.72 * swell + 0.2 * lumps,
  silt: ({ swell, lumps, grit }) => 0.6 * swell + 0.3 * lumps + 0.06 * grit,
  'silty-sand': ({ swell, lumps, grit }) => 0.45 * swell + 0.3 * lumps + 0.22 * grit,
  sand: ({ swell, lumps, grit }) => 0.3 * swell + 0.3 * lumps + 0.4 * grit,
  'rippled-sand': ripples,
  gravel,
  rock,
}

/** The height at each place of a tile, row by row. */
function levelsOf(height: Height): Float32Array {
  const swell = noiseSquare(size, 3, 3, 5)
  const lumps = noiseSquare(size, 16, 4, 9)
  const grit = noiseSquare(size, 64, 2, 7)
  const place: Place = { u: 0, v: 0, swell: 0, lumps: 0, grit: 0 }
  return Float32Array.from({ length: size * size }, (_, k) => {
    place.u = (k % size) / size
    place.v = Math.floor(k / size) / size
    place.swell = swell[k] ?? 0
    place.lumps = lumps[k] ?? 0
    place.grit = grit[k] ?? 0
    return height(place)
  })
}

/** Least and greatest lightness of each bottom: soft bottoms are even, stones are not. */
const contrast: Record<Bottom, readonly [number, number]> = {
  mud: [0.86, 1.08],
  silt: [0.88, 1.08],
  'silty-sand': [0.86, 1.1],
  sand: [0.86, 1.1],
  'rippled-sand': [0.86, 1.08],
  gravel: [0.8, 1.1],
  rock: [0.8, 1.1],
}

/** Depth of the relief as a share of its wavelength, where light from the side is to show it. */
const reliefOf: Record<Bottom, number> = {
  mud: 6,
  silt: 6,
  'silty-sand': 7,
  sand: 7,
  'rippled-sand': 9,
  gravel: 5,
  rock: 5,
}

/**
 * One tile of a bottom with the light already on it: the bottom neither moves nor turns, so its relief is shaded once
 * here and costs nothing in a frame. The caller disposes it.
 */
export function bedTexture(bottom: Bottom): CanvasTexture {
  const [low, high] = contrast[bottom]
  const levels = levelsOf(heights[bottom])
  const level = (x: number, y: number) => levels[((y + size) % size) * size + ((x + size) % size)] ?? 0
  // The picture holds sRGB bytes, so the colour is mixed in sRGB.
  const base = new Color(bedColours[bottom]).getRGB({ r: 0, g: 0, b: 0 }, SRGBColorSpace)
  const canvas = document.createElement('canvas')
  canvas.width = canvas.height = size
  const pen = canvas.getContext('2d')
  if (pen) {
    const image = pen.createImageData(size, size)
    for (let y = 0; y < size; y++) {
      for (let x = 0; x < size; x++) {
        const slope = level(x - 1, y) - level(x + 1, y) + 0.8 * (level(x, y - 1) - level(x, y + 1))
        const lit = Math.max(-0.3, Math.min(0.22, slope * 0.06 * reliefOf[bottom]))
        const light = 255 * (low + (high - low) * level(x, y) + lit)
        const k = (y * size + x) * 4
        image.data[k] = base.r * light
        image.data[k + 1] = base.g * light
        image.data[k + 2] = base.b * light
        image.data[k + 3] = 255
      }
    }
    pen.putImageData(image, 0, 0)
  }
  const texture = new CanvasTexture(canvas)
  texture.colorSpace = SRGBColorSpace
  texture.wrapS = texture.wrapT = RepeatWrapping
  texture.anisotropy = 4
  return texture
}
