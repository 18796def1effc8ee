import type { Point } from '../geometry/pot-geometry'

/** The three views of a workshop drawing. */
export const viewNames = ['front', 'side', 'above'] as const
export type ViewName = (typeof viewNames)[number]

/** A point on the paper [m]: right and up. */
export type FlatPoint = readonly [x: number, y: number]

interface Plane {
  readonly flat: (at: Point) => FlatPoint
  /** How near to the eye a point is [m], zero in the pot's middle. */
  readonly near: (at: Point, middleM: number) => number
}

/**
 * How each view lays the pot on paper. The front is bearing 0 (+x), seen with the pot's right-hand side to the right;
 * the side is bearing 90 (-y), with the front to the right; from above, the front is to the right.
 */
export const viewPlanes: Readonly<Record<ViewName, Plane>> = {
  front: { flat: ([, y, z]) => [y, z], near: ([x]) => x },
  side: { flat: ([x, , z]) => [x, z], near: ([, y]) => -y },
  above: { flat: ([x, y]) => [x, y], near: ([, , z], middleM) => z - middleM },
}
