import { firstDay, lastDay } from '@shared/schema/rule-fields'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import { inSeason } from './calendar'
import { evaluate } from './evaluate'
import type { Facts } from './facts'

/** Whether a rule applies; where that hangs on something not stated, what it hangs on. */
export type Applies = 'yes' | 'no' | { readonly missing: readonly string[] }

/**
 * Whether a rule applies to this gear, place, date and crew.
 *
 * Anything that is known and rules it out wins over what is not known: a rule of another zone never fires.
 */
export function applies(rule: Rule, pack: RulePack, facts: Facts): Applies {
  const parts = [
    gear(rule, facts),
    zone(rule, pack, facts),
    dates(rule, facts),
    season(rule, facts),
    crew(rule, facts),
  ]
  if (parts.includes('no')) return 'no'
  const conditions = [condition(rule.when, facts, 'holds'), condition(rule.unless, facts, 'fails')]
  if (conditions.includes('no')) return 'no'
  const missing = [...parts, ...conditions].flatMap((part) => (typeof part === 'object' ? part.missing : []))
  return missing.length > 0 ? { missing: [...new Set(missing)] } : 'yes'
}

const lacking = (what: string): Applies => ({ missing: [what] })
const when = (is: boolean): Applies => (is ? 'yes' : 'no')

function gear(rule: Rule, { pot }: Facts): Applies {
  return when(rule.applies?.gear?.includes(pot.gearKind) ?? true)
}

/** A zone that the pack does not know could be any of its zones. */
function zone(rule: Rule, pack: RulePack, { trip, water }: Facts): Applies {
  const { zones, exceptZones } = rule.applies ?? {}
  if (!zones && !exceptZones) return 'yes'
  const here = trip?.zone ?? water?.zone
  if (here === undefined || !pack.zones.some((one) => one.id === here)) return lacking('the zone')
  return when((zones?.includes(here) ?? true) && !(exceptZones?.includes(here) ?? false))
}

function dates({ from, to }: Rule, { trip, today }: Facts): Applies {
  if (from === undefined && to === undefined) return 'yes'
  const date = trip?.date
  if (date !== undefined) {
    const [first, last] = [from && firstDay(from), to && lastDay(to)]
    return when((first === undefined || date >= first) && (last === undefined || date <= last))
  }
  // Without a date: a rule in force since before today and without an end applies to any trip still to come.
  return to === undefined && from !== undefined && today !== undefined && firstDay(from) <= today
    ? 'yes'
    : lacking('the date')
}

function season(rule: Rule, { trip }: Facts): Applies {
  const seasons = rule.applies?.seasons
  if (!seasons) return 'yes'
  const date = trip?.date
  return date === undefined ? lacking('the date') : when(seasons.some((one) => inSeason(date, one)))
}

function crew(rule: Rule, { trip }: Facts): Applies {
  const { species, holds } = rule.applies ?? {}
  const fished = trip?.species
  const held = trip?.holds
  if (species && fished && !species.some((one) => fished.includes(one))) return 'no'
  if (holds && held && !held.includes(holds)) return 'no'
  if (species && !fished) return lacking('which species is fished for')
  return holds && !held ? lacking('which permits the crew has') : 'yes'
}

function condition(check: Rule['when'], facts: Facts, wanted: 'holds' | 'fails'): Applies {
  if (!check) return 'yes'
  const outcome = evaluate(check, facts)
  if (outcome.state === 'unknown') return { missing: outcome.missing }
  // A part that is not there meets no condition: `when` does not hold, and `unless` excuses nothing.
  if (outcome.state === 'absent') return when(wanted === 'fails')
  return when(outcome.state === wanted)
}
