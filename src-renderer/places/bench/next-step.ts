import type { Finding, PartName } from '@shared/schema/check'
import { compartmentOf, type PartId } from './part-ids'
import { findingPartWords, stepWords } from './words'

/** Fields of the strip and of the trip that a finding may ask for. */
export const tripFields = [
  'species',
  'attended',
  'tied-off',
  'soak',
  'spacing',
  'permits',
  'work-from',
] as const
export type TripField = (typeof tripFields)[number]
export type StripField =
  'region' | 'zone' | 'date' | 'people' | 'licences' | 'boat' | 'current' | 'depth' | 'bottom' | TripField

/** What to do about a finding, in words, and the place where it is done. */
export interface NextStep {
  readonly label: string
  readonly to: { readonly field: StripField } | { readonly part: PartId }
}

/** What the checks say is missing, and the field that says it. Everything else missing belongs to a part. */
const asked: readonly (readonly [phrase: string, field: StripField])[] = [
  ['the region', 'region'],
  ['rules for', 'region'],
  ['the crab sought', 'species'],
  ['which species is fished for', 'species'],
  ['the zone', 'zone'],
  ['the date', 'date'],
  ['how many people go', 'people'],
  ['how many licences there are', 'licences'],
  ['whether a boat is used', 'boat'],
  ['whether the gear is tied', 'tied-off'],
  ['whether someone stays', 'attended'],
  ['how long the gear soaks', 'soak'],
  ['how long the pot soaks', 'soak'],
  ['the distance to other gear', 'spacing'],
  ['which permits the crew has', 'permits'],
  ['the hours in which', 'work-from'],
  // Without a depth there is no water to speak of a current in.
  ['the current and depth', 'depth'],
  ['the current', 'current'],
  ['the bottom', 'bottom'],
  ['the depth', 'depth'],
]

const wanted: readonly (readonly [phrase: string, part: PartId & PartName])[] = [
  ['the frame', 'frame'],
  ['the netting', 'netting'],
  ['the rope', 'rope'],
  ['the weight of the rope', 'rope'],
  ['the float', 'float'],
]

/**
 * Where to go about a finding: to the first of the fields it misses, or to the part it is about.
 *
 * @param region the region of the trip: without one there are no crabs to choose from
 */
export function nextStep(
  finding: Pick<Finding, 'rule' | 'part' | 'missing'>,
  region: string | undefined,
): NextStep | undefined {
  const { missing, part } = finding
  if (finding.rule === 'stows:space' && missing !== undefined)
    return { label: stepWords.stow, to: { part: 'stow' } }
  const field = firstOf(asked, missing ?? '')
  if (field) {
    const first = field === 'species' && region === undefined ? 'region' : field
    return { label: stepWords[first], to: { field: first } }
  }
  const about = part ?? firstOf(wanted, missing ?? '')
  const id = about && compartmentOf(about)
  return id && { label: findingPartWords[about], to: { part: id } }
}

/** What the phrase that comes first in a text stands for. */
function firstOf<T>(phrases: readonly (readonly [phrase: string, stands: T])[], text: string): T | undefined {
  return phrases
    .map(([phrase, stands]) => ({ stands, at: text.indexOf(phrase) }))
    .filter(({ at }) => at >= 0)
    .toSorted((a, b) => a.at - b.at)[0]?.stands
}
