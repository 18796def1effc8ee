import { reachAt, wallAt, wallPositionAt, type PotShape } from '../shape'
import type { Point } from './pot-geometry'
import { onCircle } from './turned-mesh'

/* Centre lines: rings, straight and curved runs, loops. Each gives xyz triples. */

const ringPoints = 64

export function pointsOf(points: readonly Point[]): Float32Array {
  const flat = new Float32Array(points.length * 3)
  points.forEach((point, i) => flat.set(point, 3 * i))
  return flat
}

/** A closed ring that follows the outline at a height, set in by `insetM`. */
export function ringAt(shape: PotShape, z: number, insetM = 0): Float32Array {
  if (shape.kind === 'box') {
    const x = shape.lengthM / 2 - insetM
    const y = shape.widthM / 2 - insetM
    return pointsOf([
      [x, y, z],
      [-x, y, z],
      [-x, -y, z],
      [x, -y, z],
    ])
  }
  const { r } = wallAt(shape, wallPositionAt(shape, z))
  return circle([0, 0, z], r - insetM)
}

export function circle(centre: Point, r: number, count = ringPoints): Float32Array {
  return pointsOf(
    Array.from({ length: count }, (_, i) => {
      const [x, y] = onCircle(r, (2 * Math.PI * i) / count, 0)
      return [centre[0] + x, centre[1] + y, centre[2]] as const
    }),
  )
}

/** A point of the wall: angle about the axis, height. */
export function wallPoint(shape: PotShape, angle: number, z: number): Point {
  return onCircle(reachAt(shape, angle, z), angle, z)
}

/**
 * A point of the wall `acrossM` beside the middle of an opening and at a height: along the curve of a turned wall,
 * straight along a box's side.
 */
export function wallPointBeside(shape: PotShape, angle: number, acrossM: number, z: number): Point {
  if (shape.kind === 'turned') {
    const reach = reachAt(shape, angle, z)
    return wallPoint(shape, angle + acrossM / Math.max(reach, 1e-6), z)
  }
  const [x, y] = wallPoint(shape, angle, z)
  return onEnd(shape, angle) ? [x, y + acrossM * Math.sign(x), z] : [x - acrossM * Math.sign(y), y, z]
}

/** True where a direction meets a box's end (front or back) rather than its side. */
export function onEnd(shape: { lengthM: number; widthM: number }, angle: number): boolean {
  return Math.abs(Math.cos(angle)) * shape.widthM >= Math.abs(Math.sin(angle)) * shape.lengthM - 1e-12
}

/** A helix of `turns` about a ring: rope wound round a bar. */
export function helixRound(
  centreLine: (t: number) => Point,
  outward: (t: number) => readonly [number, number],
  radius: number,
  turns: number,
): Float32Array {
  const perTurn = 9
  const count = Math.ceil(turns * perTurn)
  return pointsOf(
    Array.from({ length: count }, (_, i) => {
      const t = i / count
      const [cx, cy, cz] = centreLine(t)
      const [ox, oy] = outward(t)
      const roll = (2 * Math.PI * i) / perTurn
      return [
        cx + ox * radius * Math.cos(roll),
        cy + oy * radius * Math.cos(roll),
        cz + radius * Math.sin(roll),
      ] as const
    }),
  )
}
