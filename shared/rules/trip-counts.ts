import type { Pot } from '@shared/schema/pot'
import type { Rule, RulePack, Subject } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import { applies } from './applies'
import { allowance, piecesCarried, type CountCheck } from './counts'
import type { Facts } from './facts'
import { judge } from './judge'

/** How one limit on pieces of gear stands for the gear in hand. */
export interface CountLimit {
  readonly rule: Rule
  readonly kinds: readonly Pot['gearKind'][]
  readonly inHand: number
  /** Pieces allowed, and by which limit; undefined where none bites or something is missing. */
  readonly allowed?: number
  readonly because?: string
  readonly missing: readonly string[]
  /** Pieces allowed with one more person aboard, each with a licence. */
  readonly withOneMore?: number
}

export interface TripCounts {
  readonly limits: readonly CountLimit[]
  /** More pieces that may still be taken under every limit; below zero, how many have to stay ashore. */
  readonly spare?: number
  /** Pots whose own rules, not their number, make the trip illegal, with the rules broken. */
  readonly illegalPots: readonly {
    readonly potId: string
    readonly name: string
    readonly rules: readonly string[]
  }[]
}

/**
 * How many pieces of gear a crew may set, for the gear in hand: what each limit allows, what is spare, what one more
 * person changes, and which of the pots make the trip illegal whatever their number.
 *
 * @param pack the region's rules
 * @param trip people, licences, boat, zone and date; its own number of pots is not read
 * @param pots the pots in hand, one entry a piece
 * @param now  today
 */
export function tripCounts(pack: RulePack, trip: Trip, pots: readonly Pot[], now?: string): TripCounts {
  const limits = pack.rules.flatMap((rule) => limitsOf(pack, rule, trip, pots, now))
  const spares = limits.flatMap((limit) =>
    limit.allowed === undefined ? [] : [limit.allowed - limit.inHand],
  )
  return {
    limits,
    ...(spares.length > 0 ? { spare: Math.min(...spares) } : {}),
    illegalPots: pots.flatMap((pot) => {
      const rules = brokenByItself(pack, pot, trip, now)
      return rules.length > 0 ? [{ potId: pot.id, name: pot.name, rules }] : []
    }),
  }
}

function limitsOf(
  pack: RulePack,
  rule: Rule,
  trip: Trip,
  pots: readonly Pot[],
  now: string | undefined,
): CountLimit[] {
  const check = countCheckOf(rule)
  if (!check || rule.standing !== 'law') return []
  const pot = pots.find((one) => applies(rule, pack, factsFor(one, trip, now)) !== 'no')
  if (!pot) return []
  const scope = applies(rule, pack, factsFor(pot, trip, now))
  const kinds = check.kinds ?? [pot.gearKind]
  const own = pots.filter((one) => kinds.includes(one.gearKind)).length
  const others = piecesCarried(kinds, pot.gearKind, { ...trip, pots: 0 }) ?? 0
  const allowed = allowance(check.limits, trip)
  const more = allowance(check.limits, withOneMore(trip))
  return [
    {
      rule,
      kinds,
      inHand: own + others,
      ...(allowed && 'allowed' in allowed ? allowed : {}),
      missing: [
        ...(typeof scope === 'object' ? scope.missing : []),
        ...(allowed && 'missing' in allowed ? allowed.missing : []),
      ],
      ...(more && 'allowed' in more ? { withOneMore: more.allowed } : {}),
    },
  ]
}

const countCheckOf = (rule: Rule): CountCheck | undefined =>
  rule.check?.op === 'count' ? rule.check : undefined

function withOneMore(trip: Trip): Trip {
  return {
    ...trip,
    ...(trip.people === undefined ? {} : { people: trip.people + 1 }),
    ...(trip.licences === undefined ? {} : { licences: trip.licences + 1 }),
  }
}

function factsFor(pot: Pot, trip: Trip, now: string | undefined): Facts {
  return { pot, trip, ...(now ? { today: now.slice(0, 10) } : {}) }
}

/** Rules that a pot breaks as the only piece aboard: what is left is the pot's own doing. */
function brokenByItself(pack: RulePack, pot: Pot, trip: Trip, now: string | undefined): string[] {
  const alone: Trip = { ...trip, pots: 1, otherGear: [] }
  return judge(pack, { pot, trip: alone, now })
    .findings.filter((finding) => finding.state === 'fails')
    .map((finding) => finding.rule)
    .filter((id) => !ofTheTrip.has(subjectOf(pack, id)))
}

/** Subjects that no choice of pot changes. */
const ofTheTrip = new Set<Subject | undefined>([
  'counts',
  'seasons',
  'hours',
  'attendance',
  'licence',
  'spacing',
])

const subjectOf = (pack: RulePack, id: string) => pack.rules.find((rule) => rule.id === id)?.subject
