import type { PanelName } from '@shared/design/geometry/pot-geometry'
import { Vector3 } from 'three'

const flatFacing: Partial<Record<PanelName, readonly [number, number, number]>> = {
  front: [1, 0, 0],
  back: [1, 0, 0],
  left: [0, 1, 0],
  right: [0, 1, 0],
  top: [0, 0, 1],
  base: [0, 0, 1],
}

/**
 * The panel's normal at each bar, three numbers a bar. A wall is turned about the pot's axis, so its normal is square
 * to both the bar and the way round; a bar that itself runs round faces straight out.
 */
export function panelFacing(panel: PanelName, segments: Float32Array): Float32Array {
  const facing = new Float32Array(segments.length / 2)
  const flat = flatFacing[panel]
  const bar = new Vector3()
  const round = new Vector3()
  const normal = new Vector3()
  for (let k = 0; k + 5 < segments.length; k += 6) {
    if (flat) normal.set(...flat)
    else {
      const [x1 = 0, y1 = 0, z1 = 0, x2 = 0, y2 = 0, z2 = 0] = segments.subarray(k, k + 6)
      bar.set(x2 - x1, y2 - y1, z2 - z1).normalize()
      round.set(-(y1 + y2), x1 + x2, 0).normalize()
      normal.crossVectors(round, bar)
      if (normal.lengthSq() < 0.01) normal.set(x1 + x2, y1 + y2, 0)
      normal.normalize()
    }
    normal.toArray(facing, k / 2)
  }
  return facing
}
