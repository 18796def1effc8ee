import type { PotBody } from '@shared/schema/pot'
import { mm } from './si'

/** The outline of a pot in metres. */
export type PotShape = TurnedShape | BoxShape

/** A body of revolution: round (straight wall), cone, or dome (wall as a quarter ellipse). */
export interface TurnedShape {
  readonly kind: 'turned'
  readonly dome: boolean
  readonly baseRadiusM: number
  readonly topRadiusM: number
  readonly heightM: number
}

export interface BoxShape {
  readonly kind: 'box'
  /** Along x, the pot's front and back being its ends. */
  readonly lengthM: number
  readonly widthM: number
  readonly heightM: number
}

export function shapeOf(body: PotBody): PotShape {
  return body.shape === 'box'
    ? { kind: 'box', lengthM: mm(body.lengthMm), widthM: mm(body.widthMm), heightM: mm(body.heightMm) }
    : {
        kind: 'turned',
        dome: body.shape === 'dome',
        baseRadiusM: mm(body.baseDiameterMm) / 2,
        topRadiusM: mm(body.topDiameterMm) / 2,
        heightM: mm(body.heightMm),
      }
}

/** The same outline pressed to another height. */
export const withHeight = <S extends PotShape>(shape: S, heightM: number): S => ({ ...shape, heightM })

/**
 * Radius of a turned body at a share of its height along the wall.
 *
 * Straight wall: r = r_b + (r_t - r_b) v, z = h v. Dome: r = r_t + (r_b - r_t) cos φ, z = h sin φ, φ = v π/2.
 *
 * @param v position along the wall, 0 base to 1 top
 * @returns radius and height [m]
 */
export function wallAt(shape: TurnedShape, v: number): { r: number; z: number } {
  const { baseRadiusM: rb, topRadiusM: rt, heightM: h } = shape
  if (!shape.dome) return { r: rb + (rt - rb) * v, z: h * v }
  const phi = (v * Math.PI) / 2
  return { r: rt + (rb - rt) * Math.cos(phi), z: h * Math.sin(phi) }
}

/** The position along the wall, 0-1, of a height [m]; heights beyond the wall give its ends. */
export function wallPositionAt(shape: TurnedShape, z: number): number {
  const share = Math.min(1, Math.max(0, z / shape.heightM))
  return shape.dome ? Math.asin(share) / (Math.PI / 2) : share
}

const domeSteps = 24

/** Sums a quantity over short steps of the wall: `each(mean radius, slant, mid height, rise)`. */
function alongWall(
  shape: TurnedShape,
  each: (r: number, slant: number, z: number, rise: number) => number,
): number {
  const steps = shape.dome ? domeSteps : 1
  let sum = 0
  let before = wallAt(shape, 0)
  for (let i = 1; i <= steps; i++) {
    const after = wallAt(shape, i / steps)
    const rise = after.z - before.z
    sum += each(
      (before.r + after.r) / 2,
      Math.hypot(rise, after.r - before.r),
      (before.z + after.z) / 2,
      rise,
    )
    before = after
  }
  return sum
}

/** Length of the wall from base to top, along the netting [m]. */
export function slantLength(shape: PotShape): number {
  return shape.kind === 'box' ? shape.heightM : alongWall(shape, (_, slant) => slant)
}

/**
 * Area of the wall [m2]: π (r_b + r_t) s for a straight wall, the sum of such bands for a dome, 2 (L + W) h for
 * a box.
 *
 * @source lateral area of a truncated cone
 */
export function wallArea(shape: PotShape): number {
  return shape.kind === 'box'
    ? 2 * (shape.lengthM + shape.widthM) * shape.heightM
    : alongWall(shape, (r, slant) => 2 * Math.PI * r * slant)
}

/** Height of the centre of the wall's netting [m]. */
export function wallCentreHeight(shape: PotShape): number {
  if (shape.kind === 'box') return shape.heightM / 2
  if (shape.dome) return alongWall(shape, (r, slant, z) => 2 * Math.PI * r * slant * z) / wallArea(shape)
  const { baseRadiusM: rb, topRadiusM: rt, heightM: h } = shape
  return (h / 3) * ((rb + 2 * rt) / (rb + rt))
}

export const topArea = (shape: PotShape): number =>
  shape.kind === 'box' ? shape.lengthM * shape.widthM : Math.PI * shape.topRadiusM ** 2

export const baseArea = (shape: PotShape): number =>
  shape.kind === 'box' ? shape.lengthM * shape.widthM : Math.PI * shape.baseRadiusM ** 2

/** Outline seen from the side, the long side of a box [m2]. */
export function sideOutlineArea(shape: PotShape): number {
  return shape.kind === 'box'
    ? longSide(shape) * shape.heightM
    : alongWall(shape, (r, _, __, rise) => 2 * r * rise)
}

/** Height of the centre of the side outline [m]. */
export function sideOutlineCentre(shape: PotShape): number {
  if (shape.kind === 'box') return shape.heightM / 2
  if (shape.dome) return alongWall(shape, (r, _, z, rise) => 2 * r * rise * z) / sideOutlineArea(shape)
  const { baseRadiusM: rb, topRadiusM: rt, heightM: h } = shape
  return (h / 3) * ((rb + 2 * rt) / (rb + rt))
}

const longSide = (shape: BoxShape): number => Math.max(shape.lengthM, shape.widthM)
export const shortSide = (shape: BoxShape): number => Math.min(shape.lengthM, shape.widthM)

/** Greatest and least width on the ground [m]. */
export function footprint(shape: PotShape): { longM: number; shortM: number } {
  if (shape.kind === 'box') return { longM: longSide(shape), shortM: shortSide(shape) }
  const width = 2 * Math.max(shape.baseRadiusM, shape.topRadiusM)
  return { longM: width, shortM: width }
}

/** Half-width of the wall at a height, in the direction of an angle about the axis [m]. */
export function reachAt(shape: PotShape, angleRad: number, z: number): number {
  if (shape.kind === 'turned') return wallAt(shape, wallPositionAt(shape, z)).r
  const along = Math.abs(Math.cos(angleRad))
  const across = Math.abs(Math.sin(angleRad))
  return Math.min(
    along > 1e-9 ? shape.lengthM / 2 / along : Infinity,
    across > 1e-9 ? shape.widthM / 2 / across : Infinity,
  )
}

/** Length of a ring that follows the wall at a height [m]: π D, or the four sides of a box. */
export function girthAt(shape: PotShape, z: number): number {
  return shape.kind === 'box'
    ? 2 * (shape.lengthM + shape.widthM)
    : 2 * Math.PI * wallAt(shape, wallPositionAt(shape, z)).r
}
