import type { RulePack } from '@shared/schema/rule-pack'
import type { BagLimit, SizeLimit, Species } from '@shared/schema/rule-species'

/** What one region lets be kept of a species; nothing where it names none. */
interface CaughtCell {
  readonly region: string
  readonly species: readonly Species[]
}

export interface CaughtRow {
  /** Name that a trip uses for the species. */
  readonly slug: string
  readonly cells: readonly CaughtCell[]
  /** Whether the regions do not all measure, allow and count it alike. */
  readonly differs: boolean
}

/**
 * What may be kept in several regions side by side: a row a species, in the order in which they are named.
 *
 * @param packs two or more, in the order of the columns
 */
export function compareCatch(packs: readonly RulePack[]): CaughtRow[] {
  const slugs = new Set(packs.flatMap((pack) => pack.species.map(({ slug }) => slug)))
  return [...slugs].map((slug) => {
    const cells = packs.map(({ region, species }) => ({
      region,
      species: species.filter((one) => one.slug === slug),
    }))
    return { slug, cells, differs: new Set(cells.map(({ species }) => allowed(species))).size > 1 }
  })
}

/** What entries allow, as a text to tell two regions apart: not where it was read, nor how it is worded. */
const allowed = (species: readonly Species[]): string =>
  species
    .map(({ measure, sizes, bags, keep, seasons, zones }) =>
      JSON.stringify([
        measure.method,
        sizes.map(sizeAllowed),
        bags.map(bagAllowed),
        [keep.male, keep.female, keep.eggBearing, keep.softShell],
        seasons,
        zones !== undefined,
      ]),
    )
    .toSorted()
    .join()

const sizeAllowed = ({ sex, min, max, unit, seasons, zones }: SizeLimit) =>
  [sex, min, max, unit, seasons, zones !== undefined] as const

const bagAllowed = ({ scope, kind, value, unit, per, sex, fromPeople, combinedWith, zones }: BagLimit) =>
  [scope, kind, value, unit, per, sex, fromPeople, combinedWith, zones !== undefined] as const
