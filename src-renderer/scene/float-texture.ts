import { CanvasTexture, SRGBColorSpace } from 'three'
import { paint } from './palette'

/** Bands of a float from its lower to its upper end, as shares of its length. */
function bands(colours: readonly string[], pattern: 'solid' | 'halves' | 'stripe'): [string, number][] {
  const [first = 'white', second = first] = colours
  if (pattern === 'solid') return [[first, 1]]
  if (pattern === 'stripe') {
    return [
      [first, 0.36],
      [second, 0.28],
      [first, 0.36],
    ]
  }
  return colours.map((colour) => [colour, 1 / colours.length])
}

/** Paint of a float along its axis (v), from the design's colours and pattern. */
export function floatTexture(
  colours: readonly string[],
  pattern: 'solid' | 'halves' | 'stripe',
): CanvasTexture {
  const canvas = document.createElement('canvas')
  canvas.width = 4
  canvas.height = 256
  const pen = canvas.getContext('2d')
  let from = 0
  for (const [colour, share] of bands(colours, pattern)) {
    if (!pen) break
    pen.fillStyle = paint[colour] ?? colour
    pen.fillRect(0, canvas.height * from, canvas.width, canvas.height * share + 1)
    from += share
  }
  const texture = new CanvasTexture(canvas)
  texture.colorSpace = SRGBColorSpace
  texture.anisotropy = 4
  return texture
}
