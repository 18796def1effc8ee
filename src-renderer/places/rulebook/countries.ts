import type { RegionRules } from '@renderer/state/packs.svelte'

const names = new Intl.DisplayNames('en', { type: 'region', fallback: 'code' })

/** Regions under the country that their code starts with, countries and regions by name. */
export function byCountry(regions: readonly RegionRules[]): { country: string; regions: RegionRules[] }[] {
  const found = new Map<string, RegionRules[]>()
  for (const one of regions) {
    const country = names.of(one.region.slice(0, 2)) ?? one.region
    found.set(country, [...(found.get(country) ?? []), one])
  }
  return [...found]
    .map(([country, inIt]) => ({
      country,
      regions: inIt.toSorted((a, b) => a.pack.name.localeCompare(b.pack.name)),
    }))
    .toSorted((a, b) => a.country.localeCompare(b.country))
}
