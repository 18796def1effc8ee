import * as v from 'valibot'
import { id, numberBetween } from './fields'
import { markFields } from './pot'
import { TripSchema } from './trip'
import { bottoms } from './water'

/* This machine's own choices, and where its user left off. Every field may be missing: then the default holds. */

export const SettingsSchema = v.strictObject({
  format: v.literal('potwright/settings'),
  version: v.literal(1),
  units: v.optional(v.picklist(['metric', 'imperial'])),
  theme: v.optional(v.picklist(['system', 'light', 'dark'])),
  /** The name other machines see beside what this one saved. */
  machineName: v.optional(v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(60))),
  currentPot: v.optional(id),
  currentWater: v.optional(id),
  place: v.optional(v.picklist(['bench', 'waters', 'match', 'locker', 'runs', 'season'])),
  trip: v.optional(TripSchema),
  /** The water typed in on the Bench, where no saved water is chosen. */
  benchWater: v.optional(
    v.strictObject({
      depthM: v.optional(numberBetween(0, 400)),
      currentMps: v.optional(numberBetween(0, 6)),
      bottom: v.optional(v.picklist(bottoms)),
      tideRangeM: v.optional(numberBetween(0, 18)),
    }),
  ),
  /** The user's own figures of the fishing and wear models, by key. */
  assumptions: v.optional(
    v.record(v.pipe(v.string(), v.regex(/^[a-zA-Z]{1,40}$/)), numberBetween(-1e6, 1e6)),
  ),
  /** The user's own values of the models' coefficients, by key. */
  coefficients: v.optional(
    v.record(
      v.pipe(v.string(), v.regex(/^[a-zA-Z]{1,40}$/)),
      v.strictObject({
        low: v.optional(numberBetween(-1e6, 1e6)),
        mid: v.optional(numberBetween(-1e6, 1e6)),
        high: v.optional(numberBetween(-1e6, 1e6)),
      }),
    ),
  ),
  paper: v.optional(v.picklist(['a4', 'letter'])),
  /** What stands on the reader's float and tag labels, by field. */
  labels: v.optional(v.record(v.picklist(markFields), v.pipe(v.string(), v.maxLength(80)))),
  /** The first steps were taken or waved away. */
  started: v.optional(v.boolean()),
  tourSeen: v.optional(v.boolean()),
  recentPots: v.optional(v.pipe(v.array(id), v.maxLength(12))),
})

export type Settings = v.InferOutput<typeof SettingsSchema>

export const defaultSettings: Settings = { format: 'potwright/settings', version: 1 }
