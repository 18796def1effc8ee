import { speciesBySlug } from '@shared/fishing/species'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import { legalSizes } from '@shared/verdicts/legal-sizes'

/** Stands in where no region is chosen, or none of its crabs has a least size. */
const usualWidthMm = 150

/**
 * Across how much the crab beside the pot measures: the least legal size of the crab sought, or of the region's
 * first crab that has one where none is sought yet.
 */
export function scaleCrabMm(pack: RulePack | undefined, trip: Trip): number {
  if (!pack) return usualWidthMm
  const species = trip.species ?? pack.species.map(({ slug }) => slug)
  const [first] = legalSizes(pack, { ...trip, species })
  if (!first) return usualWidthMm
  if (first.measure !== 'length') return first.sizeMm
  const [lengthPer] = Object.values(speciesBySlug(first.species)?.lengthPer ?? {})
  return lengthPer ? first.sizeMm / lengthPer.mid : usualWidthMm
}
