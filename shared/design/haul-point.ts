import type { Pot } from '@shared/schema/pot'
import { reachAt, type PotShape } from './shape'
import { angleOfBearing } from './si'

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
