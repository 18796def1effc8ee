import { shellOf } from '@shared/fishing/body'
import { speciesBySlug } from '@shared/fishing/species'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import { legalSizes } from '@shared/verdicts/legal-sizes'
import { barsThatLetOut, barsToMendAt, crabGirth } from '@shared/wear/mesh-damage'
import type { MendAt } from '@shared/wear/judgement'

/** The smallest crab that may be kept at a place, by its girth. */
export interface LegalCrab {
  readonly name: string
  readonly girthMm: number
}

/**
 * The smallest crab that may be kept, of those sought or of all in the region's rules whose proportions are known.
 *
 * @param pack the region's rules
 * @param trip species sought, zone and date, where they are known
 * @returns the crab of the least girth; undefined where no least size or no proportion is known
 */
export function smallestLegalCrab(pack: RulePack, trip: Trip): LegalCrab | undefined {
  const species = trip.species ?? pack.species.map(({ slug }) => slug)
  const crabs = legalSizes(pack, { ...trip, species }).flatMap((size): LegalCrab[] => {
    const known = speciesBySlug(size.species)
    const shell = known && shellOf(known, size.measure, size.sizeMm)
    return known && shell?.depthMm
      ? [{ name: size.name ?? known.common, girthMm: crabGirth(shell.lengthMm.mid, shell.depthMm.mid) }]
      : []
  })
  return crabs.sort((a, b) => a.girthMm - b.girthMm)[0]
}

/** When netting of a mesh is mended, so that this crab does not get out [bar in mm]. */
export function mendAtFor(crab: LegalCrab, barMm: number): MendAt {
  return {
    crab: crab.name,
    bars: barsToMendAt(crab.girthMm, barMm),
    letOutAt: Math.max(1, barsThatLetOut(crab.girthMm, barMm)),
  }
}
