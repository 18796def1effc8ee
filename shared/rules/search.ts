import type { Rule, RulePack } from '@shared/schema/rule-pack'
import type { Species } from '@shared/schema/rule-species'

/** What was found in one region: rules and species, in the order in which the pack has them. */
export interface RegionHits {
  readonly pack: RulePack
  readonly rules: readonly Rule[]
  readonly species: readonly Species[]
}

/** The words of a query, in lower case and without accents; an empty query has none. */
export function queryWords(query: string): string[] {
  return plain(query)
    .split(/[^\p{L}\p{N}/.]+/u)
    .filter((word) => word !== '')
}

/**
 * Rules and species of every region that have all the words of a query, in any order: in the sentence, the note,
 * the reason or readings, the region's, a zone's or the subject's name. Regions without a hit are left out.
 *
 * @param packs        regions to search, in the order of the answer
 * @param query        what was typed
 * @param subjectNames what a subject is called, so that it can be searched for
 */
export function searchPacks(
  packs: readonly RulePack[],
  query: string,
  subjectNames: Readonly<Record<Rule['subject'], string>>,
): RegionHits[] {
  const words = queryWords(query)
  if (words.length === 0) return []
  const has = (texts: readonly (string | undefined)[]) => {
    const text = plain(texts.filter((one) => one !== undefined).join(' '))
    return words.every((word) => text.includes(word))
  }
  return packs
    .map((pack) => ({
      pack,
      rules: pack.rules.filter((rule) => has([...ruleTexts(rule, pack), subjectNames[rule.subject]])),
      species: pack.species.filter((one) => has(speciesTexts(one, pack))),
    }))
    .filter(({ rules, species }) => rules.length + species.length > 0)
}

function ruleTexts(rule: Rule, pack: RulePack): (string | undefined)[] {
  const zones = rule.applies?.zones ?? []
  return [
    pack.name,
    rule.says,
    rule.note,
    rule.shown,
    rule.user?.note,
    ...(rule.readings ?? []).map((reading) => reading.says),
    ...pack.zones.filter((zone) => zones.includes(zone.id)).map((zone) => zone.name),
  ]
}

const speciesTexts = (one: Species, pack: RulePack) => [
  pack.name,
  ...one.commonNames,
  one.scientificName,
  one.measure.how,
  one.sexRule,
  one.note,
]

const plain = (text: string) => text.normalize('NFD').replace(/\p{M}/gu, '').toLowerCase()
