import { ringEdgeArm } from '@shared/physics/holding/edge-arm'
import type { Pot } from '@shared/schema/pot'
import { footLengthM } from './frame-members'
import { haulPoint } from './haul-point'
import type { MassProperties } from './mass-properties'
import { shortSide, type PotShape } from './shape'

/** How a pot stands on the bed: the arms that its weight and the rope act on. */
export interface Stance {
  /** Level distance from the centre of gravity to the nearest edge of the footprint [m]. */
  readonly edgeArmM: number
  /** Height of the rope's hold over the bed [m]. */
  readonly bridleHeightM: number
  /** Level distance from that edge to the rope's hold [m]. */
  readonly upliftArmM: number
  /** Height of the base over the bed [m]. */
  readonly baseHeightM: number
}

/**
 * Arms of a pot standing on a flat bed, for tipping about the down-current edge.
 *
 * Ring on the bed: b = R; on n ≥ 3 feet: b = R cos(π/n); rectangle: half the short side; less the distance of the
 * centre of gravity from the middle. One or two feet do not carry a pot; it then stands on its ring. The rope's
 * uplift acts at b: a pot lies any way round to the current, and b is the mean for a hold at its rim and exact for
 * legs over the middle.
 *
 * @source worst direction of a body on n points of support; sinkage of the edge is the bottom's, not the pot's
 */
export function stance(pot: Pot, shape: PotShape, mass: MassProperties): Stance {
  const [x, y] = mass.centreOfGravity
  const feet = pot.body.feet
  const baseHeightM = feet > 0 ? footLengthM : 0
  const arm =
    shape.kind === 'box' ? shortSide(shape) / 2 : ringEdgeArm(shape.baseRadiusM, feet >= 3 ? feet : 0)
  return {
    edgeArmM: Math.max(0, arm - Math.hypot(x, y)),
    bridleHeightM: haulPoint(pot, shape).heightM + baseHeightM,
    upliftArmM: arm,
    baseHeightM,
  }
}
