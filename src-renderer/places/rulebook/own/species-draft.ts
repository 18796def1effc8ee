import type { BagLimit, MeasureMethod, SizeLimit, Species } from '@shared/schema/rule-species'
import { err, ok, type Result } from '@shared/units/result'
import { methodWords } from '@renderer/places/gauge/words'
import { speciesFormWords as w } from '../form-words'
import { inForceOf } from './in-force'
import { seasonDrafts, seasonsOf, type SeasonDraft } from './season-draft'

/* What the form for a species holds, and the entry that it comes to. */

export interface SizeDraft {
  readonly size: Omit<SizeLimit, 'seasons'>
  readonly seasons: readonly SeasonDraft[]
}

export interface BagDraft {
  readonly bag: BagLimit
  /** The source itself says that there is no limit; an empty field alone never says so. */
  readonly unlimited: boolean
}

export interface SpeciesDraft {
  readonly name: string
  readonly scientific: string
  readonly method: MeasureMethod
  readonly how: string
  readonly sizes: readonly SizeDraft[]
  readonly bags: readonly BagDraft[]
  readonly keep: Required<Species['keep']>
  readonly seasons: readonly SeasonDraft[]
  readonly zones: readonly string[]
  readonly from: string
  readonly to: string
}

export const emptySize: SizeDraft = { size: { unit: 'mm' }, seasons: [] }
export const emptyBag: BagDraft = {
  bag: { scope: 'person', kind: 'bag', unit: 'crabs', per: 'day' },
  unlimited: false,
}

export const firstSpecies: SpeciesDraft = {
  name: '',
  scientific: '',
  method: 'not-found',
  how: '',
  sizes: [],
  bags: [],
  keep: { male: 'not-found', female: 'not-found', eggBearing: 'not-found', softShell: 'not-found' },
  seasons: [],
  zones: [],
  from: '',
  to: '',
}

export function draftOf(species: Species): SpeciesDraft {
  return {
    name: species.commonNames[0] ?? '',
    scientific: species.scientificName,
    method: species.measure.method,
    how: species.measure.how,
    sizes: species.sizes.map(({ seasons, ...size }) => ({ size, seasons: seasonDrafts(seasons) })),
    bags: species.bags.map((bag) => ({ bag, unlimited: bag.value === undefined })),
    keep: { softShell: 'not-found', ...species.keep },
    seasons: seasonDrafts(species.seasons),
    zones: species.zones ?? [],
    from: species.from ?? '',
    to: species.to ?? '',
  }
}

/** A limit with one part of it changed; one that is not given is left out. */
export function withPart<T extends object, K extends keyof T>(limit: T, key: K, value: T[K]): T {
  return Object.fromEntries(
    Object.entries({ ...limit, [key]: value }).filter(([, part]) => part !== undefined),
  ) as T
}

type Entry = Omit<Species, 'sources' | 'confidence'>

/**
 * The entry that the form comes to, or the first thing left out of it.
 *
 * @param draft what the form holds
 * @param id    id of the entry
 * @param start the entry that the form started from: what the form does not hold stays as it is there
 */
export function speciesOf(draft: SpeciesDraft, id: string, start: Species | undefined): Result<Entry> {
  const name = draft.name.trim()
  const scientificName = draft.scientific.trim() || name
  const seasons = seasonsOf(draft.seasons)
  const sizes = whole(draft.sizes.map(sizeOf))
  const bags = whole(draft.bags.map(bagOf))
  const dates = inForceOf(draft)
  if (name === '') return refused(w.needsName)
  if (!sizes) return refused(w.needsSize)
  if (!bags) return refused(w.needsBag)
  if (!seasons) return refused(w.needsDays)
  if (!dates.ok) return dates
  const { softShell, ...keep } = draft.keep
  const isSame = start !== undefined && scientificName === start.scientificName
  return ok({
    id,
    slug: isSame ? start.slug : slugOf(scientificName, id),
    scientificName,
    commonNames: [name, ...(start?.commonNames.slice(1) ?? [])],
    measure: {
      ...start?.measure,
      method: draft.method,
      how: draft.how.trim() || `${methodWords[draft.method]}.`,
    },
    sizes,
    bags,
    keep: { ...keep, ...(softShell === 'not-found' ? {} : { softShell }) },
    ...sexRule(draft, start),
    ...given('zones', draft.zones.length > 0 ? [...draft.zones] : undefined),
    ...given('seasons', seasons.length > 0 ? seasons : undefined),
    ...dates.value,
    ...given('note', start?.note),
  })
}

const refused = (message: string): Result<never> => err({ code: 'invalid', message })

const given = <K extends string, T>(key: K, value: T | undefined) =>
  (value === undefined ? {} : { [key]: value }) as { [key in K]?: T }

function whole<T>(parts: readonly (T | undefined)[]): T[] | undefined {
  const there = parts.filter((part) => part !== undefined)
  return there.length === parts.length ? there : undefined
}

function sizeOf({ size, seasons: drafts }: SizeDraft): SizeLimit | undefined {
  const seasons = seasonsOf(drafts)
  const { min, max } = size
  if (!seasons || (min === undefined && max === undefined)) return undefined
  if (min !== undefined && max !== undefined && min > max) return undefined
  return { ...size, ...given('seasons', seasons.length > 0 ? seasons : undefined) }
}

function bagOf({ bag, unlimited }: BagDraft): BagLimit | undefined {
  const { value, ...rest } = bag
  if (unlimited) return rest
  return value === undefined ? undefined : { ...rest, value }
}

/** The sentence on the sexes stands as long as what it says does. */
function sexRule({ keep }: SpeciesDraft, start: Species | undefined) {
  const stands =
    start && (['male', 'female', 'eggBearing'] as const).every((sex) => keep[sex] === start.keep[sex])
  return given('sexRule', stands ? start.sexRule : undefined)
}

/** The name that a trip uses for it: `metacarcinus-magister`. */
function slugOf(name: string, id: string): string {
  const plain = (text: string) =>
    text
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .replace(/^-|-$/g, '')
      .slice(0, 60)
  return plain(name) || plain(id)
}
