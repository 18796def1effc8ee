import type { Pot } from '@shared/schema/pot'
import { reachAt, type PotShape } from './shape'
import { angleOfBearing, bearingGap, mm } from './si'

/** Where the rope takes hold of the pot. */
export interface HaulPoint {
  readonly position: readonly [x: number, y: number, z: number]
  readonly heightM: number
  /** Distance from the axis [m], 0 for legs that meet over the middle. */
  readonly offsetM: number
  /** True for legs that meet over the middle of the top. */
  readonly central: boolean
}

/** Rise of the legs' meeting point over the top, as a share of the top's reach. Judgement. */
const legRise = 0.5

/**
 * The point by which the rope pulls and the pot hangs: on a ring at the bridle's bearing, or where legs meet over
 * the top.
 *
 * @returns the point in the pot's axes [m]; without a bridle, the top ring at the front
 */
export function haulPoint(pot: Pot, shape: PotShape): HaulPoint {
  const attach = pot.bridle?.attach ?? 'top-ring'
  const angle = angleOfBearing(pot.bridle?.bearingDeg ?? 0)
  if (attach === 'top-centre') {
    const heightM = shape.heightM + legRise * reachAt(shape, 0, shape.heightM)
    return { position: [0, 0, heightM], heightM, offsetM: 0, central: true }
  }
  const heightM = attach === 'base-ring' ? 0 : attach === 'middle-ring' ? shape.heightM / 2 : shape.heightM
  const offsetM = reachAt(shape, angle, heightM)
  return {
    position: [offsetM * Math.cos(angle), offsetM * Math.sin(angle), heightM],
    heightM,
    offsetM,
    central: false,
  }
}

/** How the haul point lies to the entrances. */
export interface HaulClearance {
  /** Index of the entrance that is nearest in bearing. */
  readonly nearest: number
  /** Clear angle from the haul point to that entrance's edge [deg]; negative when it lies over it. */
  readonly clearDeg: number
  /** Clear angle from the far side of the haul point, lowest when the pot hangs, to the nearest entrance's edge. */
  readonly belowClearDeg: number
}

/**
 * Clearance of the haul point from the entrances, so that no crab falls out while the pot hangs by it.
 *
 * Clear angle = turn between bearings - half the entrance's own angle, asin(w/(2 r)). A pot hung by one side of a
 * ring is lowest at the opposite side, so both are given.
 *
 * @returns undefined without a bridle, for legs that meet over the middle, and without entrances in the wall
 * @source common practice: tie between two entrances, never over or opposite one
 */
export function haulClearance(pot: Pot, shape: PotShape): HaulClearance | undefined {
  const bridle = pot.bridle
  if (!bridle || bridle.attach === 'top-centre') return undefined
  let found: HaulClearance | undefined
  for (const [index, entrance] of (pot.entrances ?? []).entries()) {
    if (entrance.onTop) continue
    const reach = reachAt(
      shape,
      angleOfBearing(entrance.bearingDeg),
      mm(entrance.sillMm + entrance.heightMm / 2),
    )
    const halfDeg = (Math.asin(Math.min(1, mm(entrance.widthMm) / 2 / Math.max(reach, 1e-6))) * 180) / Math.PI
    const clearDeg = bearingGap(bridle.bearingDeg, entrance.bearingDeg) - halfDeg
    const belowDeg = bearingGap(bridle.bearingDeg + 180, entrance.bearingDeg) - halfDeg
    found = {
      nearest: found && found.clearDeg <= clearDeg ? found.nearest : index,
      clearDeg: Math.min(found?.clearDeg ?? Infinity, clearDeg),
      belowClearDeg: Math.min(found?.belowClearDeg ?? Infinity, belowDeg),
    }
  }
  return found
}
