import * as v from 'valibot'
import { calendarDay, numberBetween, regionCode, slug, wholeBetween } from './fields'

/* Who goes, when and with what, `*.trip.json`: the part of a rule that is not about the pot itself. */

const clockTime = v.pipe(v.string(), v.regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'must be a time like 06:30'))

export const TripSchema = v.strictObject({
  format: v.literal('potwright/trip'),
  version: v.literal(1),
  date: v.optional(calendarDay),
  region: v.optional(regionCode),
  zone: v.optional(slug),
  people: v.optional(wholeBetween(1, 200)),
  licences: v.optional(wholeBetween(0, 200)),
  boat: v.optional(v.boolean()),
  pots: v.optional(wholeBetween(0, 1000)),
  /** Other gear carried on the same trip, by kind, for limits that pool kinds. */
  otherGear: v.optional(v.array(v.strictObject({ gearKind: slug, count: wholeBetween(0, 1000) }))),
  tiedOff: v.optional(v.boolean()),
  attended: v.optional(v.boolean()),
  /** Permits and standings that the crew has, as a rule names them: `waterfront-owner`, `five-pot-licence`. */
  holds: v.optional(v.pipe(v.array(slug), v.maxLength(20))),
  /** Distance to the nearest other gear. */
  spacingM: v.optional(numberBetween(0, 10000)),
  /** Local clock times between which gear is set and hauled. */
  workFrom: v.optional(clockTime),
  workTo: v.optional(clockTime),
  soakH: v.optional(numberBetween(0, 2000)),
  species: v.optional(v.pipe(v.array(slug), v.maxLength(12))),
  stow: v.optional(
    v.strictObject({
      lengthMm: numberBetween(50, 20000),
      widthMm: numberBetween(50, 20000),
      heightMm: numberBetween(50, 20000),
      maxKg: numberBetween(0.1, 5000),
    }),
  ),
})

export type Trip = v.InferOutput<typeof TripSchema>
