import type { Check, GearKind } from '@shared/schema/rule-check'
import type { Trip } from '@shared/schema/trip'
import type { Outcome } from './outcome'

export type CountCheck = Extract<Check, { op: 'count' }>
type Limit = CountCheck['limits'][number]

/** How many pieces a trip may carry under one rule, or what is missing to say so; nothing where no limit bites. */
export type Allowance =
  { readonly allowed: number; readonly because: string } | { readonly missing: readonly string[] } | undefined

/**
 * Pieces allowed to a crew: the lowest over the scopes of a rule (person, licence, boat, crew). Within a scope the
 * limit with the highest headcount that the crew reaches applies.
 *
 * @param limits the rule's limits
 * @param trip   people, licences and whether there is a boat
 * @returns pieces and the limit that bites, what is missing, or nothing where none applies
 */
export function allowance(limits: readonly Limit[], trip: Trip | undefined): Allowance {
  const scopes = [...new Set(limits.map((limit) => limit.per))]
  const each = scopes.map((per) =>
    scopeAllowance(
      limits.filter((limit) => limit.per === per),
      trip,
    ),
  )
  const applying = each.filter((one) => one !== undefined)
  const lacking = applying.flatMap((one) => ('missing' in one ? one.missing : []))
  const figures = applying.flatMap((one) => ('allowed' in one ? [one] : []))
  if (lacking.length > 0) return { missing: [...new Set(lacking)] }
  return figures.length === 0 ? undefined : figures.reduce((a, b) => (b.allowed < a.allowed ? b : a))
}

function scopeAllowance(limits: readonly Limit[], trip: Trip | undefined): Allowance {
  const lacking = limits.flatMap((limit) => lackingFor(limit, trip))
  if (lacking.length > 0) return { missing: lacking }
  const per = limits[0]?.per
  if (per === 'boat' && trip?.boat === false) return undefined
  const people = trip?.people ?? 0
  const licences = trip?.licences ?? 0
  const reached = limits.filter(
    (limit) => (limit.fromPeople ?? 0) <= people && (limit.fromLicences ?? 0) <= licences,
  )
  const threshold = (limit: Limit) => Math.max(limit.fromPeople ?? 0, limit.fromLicences ?? 0)
  const [limit] = reached.toSorted((a, b) => threshold(b) - threshold(a))
  if (!limit) return undefined
  if (limit.per === 'person') return { allowed: limit.value * people, because: `${limit.value} a person` }
  if (limit.per === 'licence') return { allowed: limit.value * licences, because: `${limit.value} a licence` }
  return {
    allowed: limit.value,
    because: limit.per === 'boat' ? `${limit.value} a boat` : `${limit.value} in all`,
  }
}

function lackingFor(limit: Limit, trip: Trip | undefined): string[] {
  const lacking: string[] = []
  if (limit.per === 'boat' && trip?.boat === undefined) lacking.push('whether a boat is used')
  if (limit.per === 'boat' && trip?.boat === false) return lacking
  if ((limit.per === 'person' || limit.fromPeople !== undefined) && trip?.people === undefined)
    lacking.push('how many people go')
  if ((limit.per === 'licence' || limit.fromLicences !== undefined) && trip?.licences === undefined)
    lacking.push('how many licences there are')
  return lacking
}

/** Pieces of the pooled kinds on a trip: the pots of the design's own kind and whatever else is carried. */
export function piecesCarried(
  kinds: readonly GearKind[],
  own: GearKind,
  trip: Trip | undefined,
): number | undefined {
  if (trip?.pots === undefined) return undefined
  const others = (trip.otherGear ?? [])
    .filter((gear) => kinds.some((kind) => kind === gear.gearKind))
    .reduce((sum, gear) => sum + gear.count, 0)
  return (kinds.includes(own) ? trip.pots : 0) + others
}

/** Holds the pieces carried on a trip against the most that its crew may carry. */
export function compareCount(check: CountCheck, own: GearKind, trip: Trip | undefined): Outcome {
  const part = 'trip'
  const kinds = check.kinds ?? [own]
  const allowed = allowance(check.limits, trip)
  if (allowed === undefined) return { state: 'absent', part }
  const carried = piecesCarried(kinds, own, trip)
  const lacking = [
    ...('missing' in allowed ? allowed.missing : []),
    ...(carried === undefined ? ['how many pieces of gear are carried'] : []),
  ]
  if ('missing' in allowed || carried === undefined) return { state: 'unknown', missing: lacking, part }
  const margin = allowed.allowed - carried
  const sentence = `${carried} carried; ${allowed.allowed} allowed (${allowed.because}).`
  return {
    state: margin >= 0 ? 'holds' : 'fails',
    says: margin >= 0 ? sentence : `${sentence} Leave ${-margin} ashore.`,
    part,
    actual: carried,
    limit: allowed.allowed,
    margin,
    unit: '',
  }
}
