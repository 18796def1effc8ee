import type { RulePack } from '@shared/schema/rule-pack'

/** The crabs of a region to choose from. One species can have several entries, by zone, season or sex; it is named once. */
export function speciesChoices(pack: RulePack | undefined): { value: string; label: string }[] {
  return (pack?.species ?? [])
    .filter((one, index, all) => all.findIndex((other) => other.slug === one.slug) === index)
    .map((one) => ({ value: one.slug, label: one.commonNames[0] ?? one.scientificName }))
}
