import type { RulePack } from '@shared/schema/rule-pack'

/** What people in a region call a species, by the name that a trip uses for it. */
export function crabSlugName(pack: RulePack, slug: string): string {
  return pack.species.find((one) => one.slug === slug)?.commonNames[0] ?? slug.replaceAll('-', ' ')
}
