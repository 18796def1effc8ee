import type { MeasureMethod, Species } from '@shared/schema/rule-species'
import type { Trip } from '@shared/schema/trip'
import type { LegalSize } from './legal-size'
import type { CrabMeasure } from './species'

/** Ways of measuring that the proportions know; the others say nothing of a shell's size here. */
const knownMeasures: Partial<Record<MeasureMethod, CrabMeasure>> = {
  'width-tip-to-tip': 'tip-to-tip',
  'width-points-in': 'tip-to-tip',
  'width-notch-to-notch': 'notch-to-notch',
  'width-points-out': 'inside-points',
  'width-widest': 'greatest-width',
  'length-notch-to-rear': 'length',
  'length-front-to-rear': 'length',
  'length-eye-to-rear': 'length',
}

const mmPer = { mm: 1, cm: 10, in: 25.4 } as const

/**
 * Least legal size of each crab sought on a trip, for judging entrances and gaps: the smallest limit that may
 * apply in the zone. It decides nothing about a catch.
 *
 * @param species the rules' species
 * @param trip    crabs sought and zone; without crabs sought there is no size
 * @returns sizes in mm, in the order of the trip's crabs; crabs without a limit or a known measure are left out
 */
export function legalSizesOf(species: readonly Species[], trip: Pick<Trip, 'species' | 'zone'>): LegalSize[] {
  return (trip.species ?? []).flatMap((slug) => {
    const sizes = species
      .filter((row) => row.slug === slug && inZone(row.zones, trip.zone))
      .flatMap((row) => smallestOf(row, trip.zone))
    const [first, ...rest] = sizes
    return first ? [rest.reduce((a, b) => (b.sizeMm < a.sizeMm ? b : a), first)] : []
  })
}

function smallestOf(row: Species, zone: string | undefined): LegalSize[] {
  const measure = knownMeasures[row.measure.method]
  if (!measure) return []
  return row.sizes
    .filter((limit) => limit.min !== undefined && inZone(limit.zones, zone))
    .map((limit) => ({ species: row.slug, measure, sizeMm: (limit.min ?? 0) * mmPer[limit.unit] }))
}

function inZone(zones: readonly string[] | undefined, zone: string | undefined): boolean {
  return !zones || zone === undefined || zones.includes(zone)
}
