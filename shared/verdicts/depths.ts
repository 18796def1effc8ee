import type { Finding } from '@shared/schema/check'
import type { Conditions } from '@shared/tides/conditions'
import type { Prepared } from './prepared'

/** Least and greatest depth at which the pot and its rope are solved [m]. */
export interface Depths {
  readonly lowM: number
  readonly highM: number
}

// The rope is solved only with some water over the bridle.
const leastCoverM = 0.3

/** Depths to solve at: low water no shallower than just over the pot; undefined where even high water is. */
export function depthsOver(prepared: Prepared, conditions: Conditions): Depths | undefined {
  const least = coverHeight(prepared) + leastCoverM
  if (conditions.depthHighM < least) return undefined
  return { lowM: Math.max(conditions.depthLowM, least), highM: conditions.depthHighM }
}

/** Cannot tell, where even at high water the pot is not covered. */
export function tooShallow(prepared: Prepared, { depthHighM }: Conditions, rule: string): Finding {
  const { words, shape } = prepared
  return {
    rule,
    state: 'cannot-tell',
    part: 'water',
    what: `Cannot tell: the pot, ${words.with(shape.heightM, 'm')} high, stands in no more than ${words.with(depthHighM, 'm')} of water.`,
    missing: 'water deeper than the pot is high',
    standing: 'engineering',
  }
}

const coverHeight = (prepared: Prepared) =>
  Math.max(prepared.stance.bridleHeightM, prepared.shape.heightM + prepared.stance.baseHeightM)

/** Says so where the pot dries out, or nearly, at low water. */
export function dryingFinding(prepared: Prepared, conditions: Conditions): Finding[] {
  const height = prepared.shape.heightM
  if (conditions.depthLowM >= height) return []
  const { words } = prepared
  return [
    {
      rule: 'bottom:covered',
      state: 'close',
      part: 'water',
      what: `At low water the pot, ${words.with(height, 'm')} high, stands in ${words.with(conditions.depthLowM, 'm')} of water.`,
      actual: conditions.depthLowM,
      limit: height,
      margin: conditions.depthLowM - height,
      unit: 'm',
      standing: 'engineering',
    },
  ]
}
