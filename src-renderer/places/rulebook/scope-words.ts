import type { Rule, RulePack } from '@shared/schema/rule-pack'
import { crabSlugName } from './species-names'
import { gearKindWords } from '@renderer/places/bench/words'
import { sayCalendarDay, sayDayOfYear } from '@renderer/ui/calendar-day'

type Season = { readonly from: string; readonly to: string }

export const sayZones = (pack: RulePack, ids: readonly string[]) =>
  ids.map((id) => pack.zones.find((zone) => zone.id === id)?.name ?? id).join(', ')

export const saySeasons = (seasons: readonly Season[]) =>
  seasons.map(({ from, to }) => `${sayDayOfYear(from)} to ${sayDayOfYear(to)}`).join(', ')

/** Where, when and to what a rule applies, one phrase for each way in which it is narrowed. */
export function scopePhrases(rule: Rule, pack: RulePack): string[] {
  const { gear, zones, exceptZones, species, seasons, holds } = rule.applies ?? {}
  return [
    gear && gear.map((kind) => gearKindWords[kind].toLowerCase()).join(', '),
    zones && sayZones(pack, zones),
    exceptZones && `everywhere but ${sayZones(pack, exceptZones)}`,
    species && species.map((slug) => crabSlugName(pack, slug)).join(', '),
    seasons && saySeasons(seasons),
    holds && `who holds: ${holds.replaceAll('-', ' ')}`,
    rule.from && `from ${sayCalendarDay(rule.from)}`,
    rule.to && `until ${sayCalendarDay(rule.to)}`,
  ].filter((phrase) => phrase !== undefined)
}
