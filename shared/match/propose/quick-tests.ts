import { standing } from '@shared/physics/holding/standing-pot'
import { solveLine } from '@shared/physics/line/line'
import { depthsOver } from '@shared/verdicts/depths'
import { lineIn, standingIn, type Prepared } from '@shared/verdicts/prepared'

/*
 * What a verdict cannot do without, by the cautious coefficients alone: a fraction of the work of the verdict
 * itself, so that a search can pass over what is sure to fail. Where nothing can be told they let it through, for
 * the verdict to say so.
 */

/** Whether the float keeps its reserve at high water in the strongest current. */
export function mayShow(prepared: Prepared): boolean {
  const { conditions, sets } = prepared
  const depths = conditions && depthsOver(prepared, conditions)
  const line = depths && lineIn(prepared, sets.cautious, depths.highM, conditions.surfaceCurrentMps)
  if (!line) return true
  const solved = solveLine(line, 'rough')
  if (solved.state === 'failed') return true
  return solved.state === 'surface' && solved.verticalN * (sets.cautious.floatReserve - 1) <= solved.reserveN
}

/** Whether the pot neither slides nor tips at low and at high water in the strongest current. */
export function mayHold(prepared: Prepared): boolean {
  const { conditions } = prepared
  const depths = conditions && depthsOver(prepared, conditions)
  const bottom = conditions?.bottom
  if (!depths || !bottom) return true
  return [depths.lowM, depths.highM].every((depthM) => {
    const pot = standingIn(prepared, 'cautious', depthM, conditions.surfaceCurrentMps, bottom)
    const { slideFactor, tipFactor } = standing(pot, 'rough')
    return Math.min(slideFactor, tipFactor) >= nearlyOne
  })
}

// The verdict looks at one of the two depths only; what is just short at the other must not be passed over here.
const nearlyOne = 0.98
