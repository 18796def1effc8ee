import { edgeArmLeft, frictionOn, type CoefficientSet } from '@shared/physics/coefficients'
import type { CurrentProfile } from '@shared/physics/current/profile'
import { solveLine, type Accuracy, type LineProblem, type LineResult } from '@shared/physics/line/line'
import type { ScreenModel } from '@shared/physics/netting/screen'
import type { Bottom } from '@shared/schema/water'
import { holdFactors, type Hold, type HoldFactors } from './factors'
import type { FlowBody, PotDrag } from './flow-body'
import { potDrag, type PotFlow } from './pot-drag'

/** A pot on the bed with its rope, in one water. */
export interface StandingPot {
  readonly bodies: readonly FlowBody[]
  /** Submerged weight of pot, ballast and bait [N]. */
  readonly wetWeightN: number
  /** Arm from the centre of gravity to the ground edge, on a hard bed [m]. */
  readonly edgeArmM: number
  /** Arm of the rope's uplift about that edge [m]. */
  readonly upliftArmM: number
  readonly bridleHeightM: number
  readonly bottom: Bottom
  readonly current: CurrentProfile
  readonly waterDensity: number
  readonly coefficients: CoefficientSet
  readonly screenModel?: ScreenModel
  readonly waves?: { readonly orbitalMps: number; readonly periodS: number }
  readonly slopeRad?: number
  /** Rope and float; left out, the pot stands alone. Its current is replaced by `current`. */
  readonly line?: LineProblem
}

/** Everything that acts on a pot at one current. */
export interface Standing extends HoldFactors {
  readonly hold: Hold
  readonly drag: PotDrag
  readonly line: LineResult | undefined
}

/**
 * Forces on a pot at its current, the rope's pull solved with it, and its factors against sliding and tipping.
 *
 * A line that cannot be solved pulls nothing here; `line` then carries the reason, to be reported.
 *
 * @param pot      pot, rope and water
 * @param accuracy of the line
 * @returns forces and factors
 * @source `potDrag`, `solveLine`, `holdFactors`
 */
export function standing(pot: StandingPot, accuracy: Accuracy = 'fine'): Standing {
  const flow: PotFlow = {
    current: pot.current,
    waterDensity: pot.waterDensity,
    coefficients: pot.coefficients,
    ...(pot.screenModel && { screenModel: pot.screenModel }),
    ...(pot.waves && { waves: pot.waves }),
  }
  const drag = potDrag(pot.bodies, flow)
  const line = pot.line && solveLine({ ...pot.line, ...pot.current }, accuracy)
  const pulls = line && line.state !== 'failed' ? line : undefined
  const edge = edgeArmLeft(pot.bottom, pot.coefficients)
  const hold: Hold = {
    wetWeightN: pot.wetWeightN,
    dragN: drag.dragN,
    dragMomentNm: drag.momentNm,
    liftN: drag.liftN,
    ropeHorizontalN: pulls?.potHorizontalN ?? 0,
    ropeUpliftN: pulls?.potUpliftN ?? 0,
    friction: frictionOn(pot.bottom, pot.coefficients),
    edgeArmM: pot.edgeArmM * edge,
    upliftArmM: pot.upliftArmM * edge,
    bridleHeightM: pot.bridleHeightM,
    ...(pot.slopeRad !== undefined && { slopeRad: pot.slopeRad }),
  }
  return { ...holdFactors(hold), hold, drag, line }
}
