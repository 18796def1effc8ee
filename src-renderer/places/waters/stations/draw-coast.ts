import type { CoastShape } from '@renderer/state/coast-shape'
import type { MapView } from './map-view.svelte'

/** Above this scale the thinned shapes would show their corners. */
const COARSE_BELOW = 320

const paths = new WeakMap<readonly Float32Array[], Path2D>()

/** Draws sea and land onto a canvas of `ratio` device pixels a pixel. */
export function drawCoast(
  context: CanvasRenderingContext2D,
  view: MapView,
  shapes: readonly CoastShape[],
  ratio: number,
  colours: { sea: string; land: string; shore: string },
): void {
  const { x, y, scale, width, height } = view
  context.setTransform(ratio, 0, 0, ratio, 0, 0)
  context.fillStyle = colours.sea
  context.fillRect(0, 0, width, height)
  const k = scale * ratio
  context.setTransform(k, 0, 0, k, (width / 2) * ratio - x * k, (height / 2) * ratio - y * k)
  context.fillStyle = colours.land
  context.strokeStyle = colours.shore
  context.lineWidth = 1 / scale
  const [left, right] = [x - width / 2 / scale, x + width / 2 / scale]
  const [top, bottom] = [y - height / 2 / scale, y + height / 2 / scale]
  for (const { bounds, fine, coarse } of shapes) {
    if (bounds[0] > right || bounds[2] < left || bounds[1] > bottom || bounds[3] < top) continue
    const path = pathOf(scale < COARSE_BELOW ? coarse : fine)
    context.fill(path)
    context.stroke(path)
  }
}

function pathOf(rings: readonly Float32Array[]): Path2D {
  const known = paths.get(rings)
  if (known) return known
  const path = new Path2D()
  for (const ring of rings) {
    path.moveTo(ring[0] ?? 0, ring[1] ?? 0)
    for (let i = 2; i < ring.length; i += 2) path.lineTo(ring[i] ?? 0, ring[i + 1] ?? 0)
    path.closePath()
  }
  paths.set(rings, path)
  return path
}
