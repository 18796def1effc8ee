import type { RulePack, RuleSource } from '@shared/schema/rule-pack'
import type { Species } from '@shared/schema/rule-species'
import { ok, type Result } from '@shared/units/result'
import { ownNote, withSource } from './own-packs'
import { parsePack } from './pack'

/* What may be kept, as the user found it: laid over a shipped entry of the same id, or added. */

/**
 * Puts an entry of the user's into their pack, in place of one with its id or at the end. The whole of it is theirs:
 * every part names their source, none keeps that of what it replaces.
 *
 * @param own    the user's pack
 * @param one    the entry; its sources are replaced by `source`
 * @param source where the user has it from; left out, it is their own note
 * @returns the pack with the entry in it, or why it cannot be, with the path
 */
export function withSpecies(
  own: RulePack,
  one: Omit<Species, 'sources'>,
  source?: RuleSource,
): Result<RulePack> {
  const { pack, index } = withSource(own, source ?? ownNote(one.user?.date ?? own.checkedOn))
  const mine: Species = {
    ...one,
    measure: uncited(one.measure),
    sizes: one.sizes.map(uncited),
    bags: one.bags.map(uncited),
    sources: [index],
  }
  const at = pack.species.findIndex(({ id }) => id === one.id)
  const species = at < 0 ? [...pack.species, mine] : pack.species.with(at, mine)
  const read = parsePack({ ...pack, species })
  return read.ok ? ok({ ...pack, species }) : read
}

function uncited<T extends { sources?: number[] | undefined; confidence?: unknown }>(part: T): T {
  const kept = { ...part }
  delete kept.sources
  delete kept.confidence
  return kept
}

/** The user's pack without one of its entries; a shipped one of that id comes back into use. */
export function withoutSpecies(own: RulePack, id: string): RulePack {
  return { ...own, species: own.species.filter((one) => one.id !== id) }
}

/** An id for a new entry of the user's that no pack uses yet: `US-WA:own-1`, `US-WA:own-2`, … */
export function freshSpeciesId(region: string, ...packs: readonly (RulePack | undefined)[]): string {
  const used = new Set(packs.flatMap((pack) => pack?.species.map(({ id }) => id) ?? []))
  let number = 1
  while (used.has(`${region}:own-${number}`)) number += 1
  return `${region}:own-${number}`
}
