import type { PotShape } from '../shape'
import type { Point, PotGeometry, Tube } from './pot-geometry'

/** Box round outline, bars and feet of the pot itself. */
export function boundsOf(shape: PotShape, tubes: readonly Tube[]): PotGeometry['bounds'] {
  const x = shape.kind === 'box' ? shape.lengthM / 2 : Math.max(shape.baseRadiusM, shape.topRadiusM)
  const y = shape.kind === 'box' ? shape.widthM / 2 : x
  const min: [number, number, number] = [-x, -y, 0]
  const max: [number, number, number] = [x, y, shape.heightM]
  for (const { points, radiusM } of tubes)
    points.forEach((value, i) => {
      const axis = i % 3
      min[axis] = Math.min(min[axis] ?? value, value - radiusM)
      max[axis] = Math.max(max[axis] ?? value, value + radiusM)
    })
  return { min: min satisfies Point, max: max satisfies Point }
}
