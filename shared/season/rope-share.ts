import type { Coefficients } from '@shared/physics/coefficients'
import type { InstalledPart } from '@shared/schema/gear'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import { lifts } from '@shared/verdicts/lifts'
import { prepare } from '@shared/verdicts/prepared'

/** What the haul of a design asks of its rope. */
export interface RopeNeed {
  /** Share of the new strength of the design's own rope. */
  readonly share: number
  readonly diameterMm: number
}

/**
 * Share of its new strength that a design's rope must still have: the peak of the haul over the rope's safe load.
 *
 * S_min = DF·F/(knot·break load), with the middle coefficients of the verdict on the haul
 *
 * @param pot          design
 * @param materials    tables of ropes and masses
 * @param coefficients coefficients of the models
 * @returns the share; above 1 the rope was never strong enough; undefined where mass or strength is not known
 * @source as the verdict on the haul
 */
export function ropeNeed(pot: Pot, materials: Materials, coefficients: Coefficients): RopeNeed | undefined {
  const rope = lifts(prepare({ pot, materials, coefficients })).findings.find(
    ({ rule }) => rule === 'lifts:rope',
  )
  const [peakN, safeN] = [rope?.actual, rope?.limit]
  if (!pot.rope || typeof peakN !== 'number' || typeof safeN !== 'number' || !(safeN > 0)) return undefined
  return { share: peakN / safeN, diameterMm: pot.rope.diameterMm }
}

/**
 * The share for a rope that was put in with another diameter than the design's: strength goes by its square.
 *
 * @param need what the haul asks of the design's rope
 * @param part the rope as it was put in
 * @returns share of its own new strength
 */
export function shareOf(need: RopeNeed, { diameterMm }: Pick<InstalledPart, 'diameterMm'>): number {
  return diameterMm === undefined ? need.share : need.share * (need.diameterMm / diameterMm) ** 2
}
