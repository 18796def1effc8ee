import type { LegalSize } from '@shared/fishing/legal-size'
import { gaugeEntries } from '@shared/rules/gauge'
import type { RulePack } from '@shared/schema/rule-pack'
import { toBase } from '@shared/schema/rule-units'
import type { Trip } from '@shared/schema/trip'
import { measureInModels } from './measure-in-models'

/**
 * The least legal size of each crab that a trip is after, as the region's rules take it [mm].
 *
 * Where the limit differs by sex, zone or date that the trip leaves open, the smallest is taken: an entrance that
 * lets the largest in and a gap that lets out nothing legal are judged by it.
 *
 * @param pack the region's rules
 * @param trip species, and zone and date where they are known
 * @returns one entry a species that has a minimum size and a way of measuring that the models know
 */
export function legalSizes(pack: RulePack, trip: Trip): LegalSize[] {
  const sought = trip.species ?? []
  return gaugeEntries(pack, trip).flatMap(({ species, sizes }) => {
    const measure = measureInModels[species.measure.method]
    const least = sizes.flatMap(({ min, unit }) => (min === undefined ? [] : [toBase(min, unit)]))
    if (!sought.includes(species.slug) || !measure || least.length === 0) return []
    const name = species.commonNames[0] ?? species.scientificName
    return [{ species: species.slug, name, measure, sizeMm: Math.min(...least) }]
  })
}
