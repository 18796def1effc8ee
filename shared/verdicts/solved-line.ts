import type { Outlook } from '@shared/physics/coefficients'
import { netBuoyancy } from '@shared/physics/float/float'
import { solveLine, type LineSolution } from '@shared/physics/line/line'
import { minimumRope } from '@shared/physics/line/minimum-rope'
import { pullUnderCurrent, type CurrentLimit } from '@shared/physics/line/pull-under'
import type { Conditions } from '@shared/tides/conditions'
import type { Depths } from './depths'
import { lineIn, type Prepared } from './prepared'

/** Rope and float solved in one water, with one outlook. */
export interface SolvedLine {
  /** At high water in the strongest current, where it asks most of the float. */
  readonly high: LineSolution
  /** Farthest that the float stands off the pot, at high or low water [m]. */
  readonly swingM: number
  readonly buoyancyN: number
  /** Buoyancy wanted over the buoyancy used. */
  readonly reserve: number
  readonly pullUnder: CurrentLimit | undefined
  /** Shortest rope for the depth alone: high water, half a wave and rope in hand [m]. */
  readonly byDepthM: number
  /** Shortest rope, by depth and by buoyancy; NaN where none does it [m]. */
  readonly minimumRopeM: number
}

/**
 * Rope and float over the whole tide in the strongest current.
 *
 * @param depths     low and high water [m]
 * @param conditions their current
 * @returns the line, or why it has no balance as a sentence
 * @source shared/physics/line
 */
export function solvedLine(
  prepared: Prepared,
  outlook: Outlook,
  depths: Depths,
  conditions: Conditions,
): SolvedLine | string {
  const set = prepared.sets[outlook]
  const problem = lineIn(prepared, set, depths.highM, conditions.surfaceCurrentMps)
  const shallow = lineIn(prepared, set, depths.lowM, conditions.surfaceCurrentMps)
  if (!problem || !shallow) return 'The rope is not known.'
  const high = solveLine(problem, 'rough')
  if (high.state === 'failed') return high.reason
  const low = depths.lowM < depths.highM ? solveLine(shallow, 'rough') : high
  if (low.state === 'failed') return low.reason
  const byBuoyancy = minimumRope(problem, 1 / set.floatReserve)
  const buoyancyN = netBuoyancy(problem.float, problem.waterDensity)
  const byDepthM = lengthByDepth(prepared, set.handlingRope, depths)
  return {
    high,
    swingM: Math.max(high.offsetM, low.offsetM),
    buoyancyN,
    reserve: set.floatReserve,
    pullUnder: pullUnderCurrent(problem, 1, {
      // The rope's loads grow nearly with the square of the current.
      near: conditions.surfaceCurrentMps * Math.sqrt(buoyancyN / Math.max(high.verticalN, 1e-3)),
      tolerance: 1e-3,
    }),
    byDepthM,
    minimumRopeM: byBuoyancy === undefined ? Number.NaN : Math.max(byDepthM, byBuoyancy),
  }
}

/** Shortest rope for the depth alone: to the surface at high water, half a wave, and some in hand [m]. */
export function lengthByDepth({ conditions, stance }: Prepared, inHandM: number, { highM }: Depths): number {
  const waveM = conditions?.waves?.heightM ?? 0
  return highM + waveM / 2 + inHandM - stance.bridleHeightM
}
