import * as v from 'valibot'
import { itemKinds, quantityNames, type ItemKind, type QuantityName } from './rule-quantities'
import { ruleUnitNames, type RuleUnitName } from './rule-units'
import { gearKinds, type Pot } from './pot'
import { slug, wholeBetween } from './fields'

/*
 * The closed set of operators a rule is written with. A check is judged to hold, to fail, not to apply, or to be
 * unknown; the same operators say when a rule applies. No code in data.
 */

export type GearKind = Pot['gearKind']

const quantity = v.picklist(quantityNames, 'is not a quantity that a rule may name')
const unit = v.picklist(ruleUnitNames, 'is not a unit that a rule may use')
const figure = v.pipe(v.number(), v.finite(), v.minValue(0, 'must not be below zero'))
const words = v.pipe(
  v.array(v.pipe(v.string(), v.minLength(1), v.maxLength(60))),
  v.minLength(1, 'must not be empty'),
)
const gear = v.picklist(gearKinds)

/** A day of the year, `12-01`, that exists (29 February among them). */
const dayOfYear = v.pipe(
  v.string(),
  v.regex(/^\d{2}-\d{2}$/, 'must be a day like 12-01'),
  v.check(isDayOfYear, 'is not a day of the year'),
)

function isDayOfYear(day: string): boolean {
  const at = new Date(`2024-${day}T00:00:00Z`)
  return !Number.isNaN(at.getTime()) && at.toISOString().slice(5, 10) === day
}

export const season = v.strictObject({ from: dayOfYear, to: dayOfYear })

export const weekdays = [
  'monday',
  'tuesday',
  'wednesday',
  'thursday',
  'friday',
  'saturday',
  'sunday',
] as const

/** A time of day: by the clock, or so many minutes after sunrise or sunset (before, where negative). */
const timeOfDay = v.variant('by', [
  v.strictObject({
    by: v.literal('clock'),
    at: v.pipe(v.string(), v.regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time like 06:30')),
  }),
  v.strictObject({
    by: v.picklist(['sunrise', 'sunset']),
    plusMinutes: v.pipe(v.number(), v.integer(), v.minValue(-240), v.maxValue(240)),
  }),
])

const countScopes = ['person', 'licence', 'boat', 'crew'] as const

type NumberCheck = { op: 'max' | 'min'; quantity: QuantityName; value: number; unit: RuleUnitName }
type FlagCheck = { op: 'is'; quantity: QuantityName; value: boolean }
type WordCheck = {
  op: 'one-of' | 'none-of' | 'only' | 'includes' | 'mentions'
  quantity: QuantityName
  values: string[]
}
type CountLimit = {
  per: (typeof countScopes)[number]
  value: number
  fromPeople?: number | undefined
  fromLicences?: number | undefined
}
type CountCheck = { op: 'count'; kinds?: GearKind[] | undefined; limits: CountLimit[] }
type GearCheck = {
  op: 'gear'
  allowed?: GearKind[] | undefined
  banned?: GearKind[] | undefined
  possession?: boolean | undefined
  otherwise: 'fails' | 'cannot-tell' | 'holds'
}
type Season = { from: string; to: string }
type CalendarCheck =
  | { op: 'open'; seasons: Season[] }
  | { op: 'closed'; seasons: Season[] }
  | { op: 'closed-days'; days: (typeof weekdays)[number][] }
  | { op: 'closed-from'; month: number; nth: number; weekday: (typeof weekdays)[number]; days: number }
  | { op: 'hours'; from: v.InferOutput<typeof timeOfDay>; to: v.InferOutput<typeof timeOfDay> }
type PlaceCheck = { op: 'forbidden' }
type ItemCheck = { op: 'every'; of: ItemKind; where: Check } | { op: 'none'; of: ItemKind; where: Check }
type HasCheck = { op: 'has'; of: ItemKind; each: { count: number; where: Check }[] }
type GroupCheck = { op: 'all-of' | 'any-of'; checks: Check[] }
type NotCheck = { op: 'not'; check: Check }

export type Check =
  | NumberCheck
  | FlagCheck
  | WordCheck
  | CountCheck
  | GearCheck
  | CalendarCheck
  | PlaceCheck
  | ItemCheck
  | HasCheck
  | GroupCheck
  | NotCheck

const nested: v.GenericSchema<Check> = v.lazy(() => check)
const several = v.pipe(v.array(nested), v.minLength(1, 'must not be empty'))

export const check: v.GenericSchema<Check> = v.variant(
  'op',
  [
    /** A number at most, or at least, so much. */
    v.strictObject({ op: v.picklist(['max', 'min']), quantity, value: figure, unit }),
    /** A yes or no that must be as stated. */
    v.strictObject({ op: v.literal('is'), quantity, value: v.boolean() }),
    /** A text among, or not among, the values; every word of a list among them; all of them in the list; said in it. */
    v.strictObject({
      op: v.picklist(['one-of', 'none-of', 'only', 'includes', 'mentions']),
      quantity,
      values: words,
    }),
    /** Pieces of gear carried, pooled over kinds; where several limits apply the lowest counts. */
    v.strictObject({
      op: v.literal('count'),
      kinds: v.optional(v.pipe(v.array(gear), v.minLength(1))),
      limits: v.pipe(
        v.array(
          v.strictObject({
            per: v.picklist(countScopes),
            value: wholeBetween(0, 10000),
            fromPeople: v.optional(wholeBetween(1, 100)),
            fromLicences: v.optional(wholeBetween(1, 100)),
          }),
        ),
        v.minLength(1, 'must not be empty'),
      ),
    }),
    /** Kinds of gear allowed and banned, from use or from possession, and what that means for the rest. */
    v.strictObject({
      op: v.literal('gear'),
      allowed: v.optional(v.array(gear)),
      banned: v.optional(v.array(gear)),
      possession: v.optional(v.boolean()),
      otherwise: v.picklist(['fails', 'cannot-tell', 'holds']),
    }),
    v.strictObject({ op: v.picklist(['open', 'closed']), seasons: v.pipe(v.array(season), v.minLength(1)) }),
    v.strictObject({
      op: v.literal('closed-days'),
      days: v.pipe(v.array(v.picklist(weekdays)), v.minLength(1)),
    }),
    /** So many days in a row from a weekday of a month on: the third Friday of February. */
    v.strictObject({
      op: v.literal('closed-from'),
      month: wholeBetween(1, 12),
      nth: wholeBetween(1, 4),
      weekday: v.picklist(weekdays),
      days: wholeBetween(1, 200),
    }),
    /** Gear may be worked between these times only. */
    v.strictObject({ op: v.literal('hours'), from: timeOfDay, to: timeOfDay }),
    /** Fails wherever the rule applies: a closed area, a banned way. */
    v.strictObject({ op: v.literal('forbidden') }),
    /** Every, or no, entrance, escape gap or rope weight is so. */
    v.strictObject({ op: v.picklist(['every', 'none']), of: v.picklist(itemKinds), where: nested }),
    /** So many different ones of each sort: two rings of two sizes are not met by two of one size. */
    v.strictObject({
      op: v.literal('has'),
      of: v.picklist(itemKinds),
      each: v.pipe(
        v.array(v.strictObject({ count: wholeBetween(1, 24), where: nested })),
        v.minLength(1, 'must not be empty'),
      ),
    }),
    v.strictObject({ op: v.picklist(['all-of', 'any-of']), checks: several }),
    v.strictObject({ op: v.literal('not'), check: nested }),
  ],
  'is not an operator that a rule may use',
) as v.GenericSchema<Check>

/** Where and when a rule applies; what is left out does not narrow it. */
export const scope = v.strictObject({
  gear: v.optional(v.pipe(v.array(gear), v.minLength(1))),
  zones: v.optional(v.pipe(v.array(slug), v.minLength(1))),
  exceptZones: v.optional(v.pipe(v.array(slug), v.minLength(1))),
  species: v.optional(v.pipe(v.array(slug), v.minLength(1))),
  seasons: v.optional(v.pipe(v.array(season), v.minLength(1))),
  /** Held by the crew: permits and standings by name. */
  holds: v.optional(slug),
})
