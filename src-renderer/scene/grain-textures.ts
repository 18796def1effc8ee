import { CanvasTexture, RepeatWrapping, SRGBColorSpace, type Texture } from 'three'
import type { LookSpec } from './material-looks'
import { noiseSquare } from './noise'

export type Grain = NonNullable<LookSpec['grain']> | 'plain'

const size = 128

interface GrainSpec {
  /** Lightness 0 to 1 at a place on the surface; `u` runs round the bar, `v` along it, both repeat. */
  readonly light: (u: number, v: number, noise: number) => number
  /** Cells, octaves and seed of the noise at the same place. */
  readonly noise?: readonly [number, number, number]
  readonly repeat: readonly [number, number]
}

const grains: Record<Grain, GrainSpec> = {
  plain: { light: () => 1, repeat: [1, 1] },
  spangle: { light: (_u, _v, noise) => 0.74 + 0.26 * noise, noise: [6, 2, 11], repeat: [1, 0.25] },
  pitted: { light: (_u, _v, noise) => 0.6 + 0.4 * noise, noise: [10, 3, 23], repeat: [1, 0.5] },
  bag: { light: bagNet, repeat: [6, 4] },
  wood: { light: woodRings, noise: [4, 3, 37], repeat: [1, 0.2] },
  lay: {
    light: (u, v) => 0.55 + 0.5 * Math.abs(Math.sin(Math.PI * (3 * u + 3 * v))) ** 0.5,
    repeat: [1, 0.34],
  },
}

function woodRings(u: number, _v: number, noise: number): number {
  return 0.8 + 0.2 * Math.sin(2 * Math.PI * (4 * u + 0.8 * noise))
}

/** One mesh of a bait bag: dark strands over what shows through. */
function bagNet(u: number, v: number): number {
  const strand = Math.min(Math.abs(((u + v) % 1) - 0.5), Math.abs(((u - v + 1) % 1) - 0.5))
  return strand < 0.1 ? 0.3 : 1
}

/** Draws a grain once; the caller owns and disposes it. */
export function grainTexture(grain: Grain): Texture {
  const canvas = document.createElement('canvas')
  canvas.width = size
  canvas.height = size
  const pen = canvas.getContext('2d')
  const { light, noise, repeat } = grains[grain]
  const noises = noise && noiseSquare(size, ...noise)
  if (pen) {
    const image = pen.createImageData(size, size)
    for (let y = 0; y < size; y++) {
      for (let x = 0; x < size; x++) {
        const level = 255 * light(x / size, y / size, noises?.[y * size + x] ?? 0)
        image.data.fill(level, (y * size + x) * 4, (y * size + x) * 4 + 3)
        image.data[(y * size + x) * 4 + 3] = 255
      }
    }
    pen.putImageData(image, 0, 0)
  }
  const texture = new CanvasTexture(canvas)
  texture.colorSpace = SRGBColorSpace
  texture.wrapS = texture.wrapT = RepeatWrapping
  texture.repeat.set(...repeat)
  texture.anisotropy = 4
  return texture
}
