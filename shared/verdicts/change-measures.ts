import type { Outlook } from '@shared/physics/coefficients'
import { netBuoyancy } from '@shared/physics/float/float'
import { standing } from '@shared/physics/holding/standing-pot'
import { solveLine } from '@shared/physics/line/line'
import { depthsOver } from './depths'
import { worstDepth } from './holds-bottom'
import { lifts } from './lifts'
import { lineIn, standingIn, type Prepared } from './prepared'
import { lengthByDepth } from './solved-line'

/** How a verdict stands for a design: what holds over what is asked, 1 and more holds; and the load it is about. */
export interface Measure {
  readonly factor: number
  readonly loadN: number
}

/** Undefined where it cannot be told. */
export type Measuring = (prepared: Prepared) => Measure | undefined

/** The lesser of the factors against sliding and tipping; what pushes the pot along. */
export const holdMeasure =
  (goal: Outlook): Measuring =>
  (prepared) => {
    const { conditions, mass } = prepared
    if (!conditions?.bottom || mass.missing.length > 0) return undefined
    const depthM = worstDepth(prepared, conditions, conditions.bottom)
    if (depthM === undefined) return undefined
    const solved = standing(
      standingIn(prepared, goal, depthM, conditions.surfaceCurrentMps, conditions.bottom),
      'rough',
    )
    return {
      factor: Math.min(solved.slideFactor, solved.tipFactor),
      loadN: solved.drag.dragN + solved.hold.ropeHorizontalN,
    }
  }

/** The float's buoyancy over what the rope takes with its reserve, and the rope over what the depth asks for. */
export const floatMeasure =
  (goal: Outlook): Measuring =>
  (prepared) => {
    const { conditions, sets } = prepared
    const depths = conditions && depthsOver(prepared, conditions)
    if (!conditions || !depths) return undefined
    const problem = lineIn(prepared, sets[goal], depths.highM, conditions.surfaceCurrentMps)
    const line = problem && solveLine(problem, 'rough')
    if (!problem || !line || line.state === 'failed') return undefined
    const buoyancyN = netBuoyancy(problem.float, problem.waterDensity)
    // Under water the rope asks for more than all of it; how much more shows in how deep it is drawn.
    const dipped = line.state === 'under' ? 1 + line.dipM / Math.max(depths.highM, 0.1) : 1
    const up = buoyancyN / Math.max(line.verticalN * sets[goal].floatReserve * dipped, 1e-6)
    const long = problem.ropeLengthM / lengthByDepth(prepared, sets[goal].handlingRope, depths)
    return { factor: Math.min(up, long), loadN: line.verticalN * dipped }
  }

/** The rope's safe load over the peak of the haul; its load is what the rope bears. */
export const liftMeasure =
  (goal: Outlook): Measuring =>
  (prepared) => {
    const rope = lifts(prepared).findings.find((finding) => finding.rule === 'lifts:rope')
    if (typeof rope?.limit !== 'number' || typeof rope.actual !== 'number') return undefined
    const enough = rope.state === 'holds' || (rope.state === 'close' && goal === 'middle')
    const factor = rope.limit / rope.actual
    return { factor: enough ? Math.max(1, factor) : Math.min(factor, 0.99), loadN: rope.limit }
  }
