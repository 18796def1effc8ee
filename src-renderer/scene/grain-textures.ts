import { CanvasTexture, RepeatWrapping, SRGBColorSpace, type Texture } from 'three'
import type { LookSpec } from './material-looks'
import { createNoise } from './noise'

export type Grain = NonNullable<LookSpec['grain']> | 'plain'

const size = 128

/** Lightness 0 to 1 at a place on the surface; `u` runs round the bar, `v` along it, both repeat. */
const grains: Record<Grain, { light: (u: number, v: number) => number; repeat: [number, number] }> = {
  plain: { light: () => 1, repeat: [1, 1] },
  spangle: { light: blend(createNoise(6, 2, 11), 0.74, 1), repeat: [1, 0.25] },
  pitted: { light: blend(createNoise(10, 3, 23), 0.6, 1), repeat: [1, 0.5] },
  bag: { light: (u, v) => bagNet(u, v), repeat: [6, 4] },
  wood: { light: blend((u, v) => woodRings(u * 4, v), 0.6, 1), repeat: [1, 0.2] },
  lay: {
    light: (u, v) => 0.55 + 0.5 * Math.abs(Math.sin(Math.PI * (3 * u + 3 * v))) ** 0.5,
    repeat: [1, 0.34],
  },
}

const woodGrain = createNoise(4, 3, 37)

function woodRings(u: number, v: number): number {
  return 0.5 + 0.5 * Math.sin(2 * Math.PI * (u + 0.8 * woodGrain(u / 4, v)))
}

/** One mesh of a bait bag: dark strands over what shows through. */
function bagNet(u: number, v: number): number {
  const strand = Math.min(Math.abs(((u + v) % 1) - 0.5), Math.abs(((u - v + 1) % 1) - 0.5))
  return strand < 0.1 ? 0.3 : 1
}

function blend(noise: (u: number, v: number) => number, low: number, high: number) {
  return (u: number, v: number) => low + (high - low) * noise(u, v)
}

/** Draws a grain once; the caller owns and disposes it. */
export function grainTexture(grain: Grain): Texture {
  const canvas = document.createElement('canvas')
  canvas.width = size
  canvas.height = size
  const pen = canvas.getContext('2d')
  const { light, repeat } = grains[grain]
  if (pen) {
    const image = pen.createImageData(size, size)
    for (let y = 0; y < size; y++) {
      for (let x = 0; x < size; x++) {
        const level = 255 * light(x / size, y / size)
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
