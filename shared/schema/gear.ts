import * as v from 'valibot'
import { calendarDay, id, numberBetween, shortText, slug } from './fields'

/* The parts of an owned pot, as they were bought and put in. */

export const partKinds = [
  'rope',
  'netting',
  'bait-bag',
  'bait-basket',
  'chafe',
  'release-cord',
  'frame',
  'float',
  'tag',
  'ties',
  'door-hook',
] as const
export type PartKind = (typeof partKinds)[number]

export const InstalledPartSchema = v.strictObject({
  id,
  kind: v.picklist(partKinds),
  /** A word of the trade such as PP, PE, cotton, steel-galvanised, PVC. */
  material: v.optional(v.pipe(v.string(), v.minLength(1), v.maxLength(40))),
  installedOn: calendarDay,
  cost: v.optional(numberBetween(0, 1e6)),
  supplierNote: v.optional(shortText),
  /** The size that counts for that kind of part. */
  diameterMm: v.optional(numberBetween(0.1, 1500)),
  lengthM: v.optional(numberBetween(0, 2000)),
  barLengthMm: v.optional(numberBetween(1, 200)),
  count: v.optional(numberBetween(0, 1000)),
  zincUm: v.optional(numberBetween(0, 500)),
  breakingN: v.optional(numberBetween(1, 1e6)),
  /** What it holds in stock and shopping lists, where that differs from its kind and material. */
  item: v.optional(slug),
})

export type InstalledPart = v.InferOutput<typeof InstalledPartSchema>
