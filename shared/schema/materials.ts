import * as v from 'valibot'
import { confidences } from './check'
import { numberBetween, slug, wholeBetween } from './fields'
import { nettingMaterials, ropeMaterials } from './pot'

/*
 * Materials, as data: what the design's ids and words weigh and bear. Each row carries its source and how sure
 * of it we are. A user's own rows have the same form and are marked as theirs.
 */

const row = {
  id: slug,
  /** Set on rows the user added or changed. */
  own: v.optional(v.literal(true)),
  source: v.pipe(v.string(), v.minLength(1)),
  confidence: v.picklist(confidences),
}

/** Where a solid may be used, so that a list offers what fits. */
export const solidUses = [
  'frame',
  'ballast',
  'float',
  'netting',
  'rope',
  'cord',
  'chafe',
  'bait',
  'catch',
] as const

const solid = v.strictObject({
  ...row,
  name: v.string(),
  densityKgM3: numberBetween(10, 20000),
  uses: v.array(v.picklist(solidUses)),
  /** The solid under the coating, whose bar table applies. */
  core: v.optional(slug),
  /** Zinc or plastic on the surface of a bar [kg/m2]. */
  coatingKgM2: v.optional(numberBetween(0, 20)),
})

const bar = v.strictObject({
  ...row,
  material: slug,
  diameterMm: numberBetween(1, 60),
  massKgPerM: numberBetween(0.001, 50),
})

const rope = v.strictObject({
  ...row,
  material: v.picklist(ropeMaterials),
  diameterMm: numberBetween(2, 40),
  massKgPer100M: numberBetween(0.01, 500),
  breakingKn: numberBetween(0.05, 2000),
})

const twine = v.strictObject({
  ...row,
  material: v.picklist(nettingMaterials),
  diameterMm: numberBetween(0.3, 8),
  /** Mass of one kilometre [g]. */
  rtex: numberBetween(10, 100000),
})

const floatBody = v.strictObject({
  ...row,
  name: v.string(),
  shape: v.picklist(['sphere', 'cylinder', 'bullet']),
  diameterMm: numberBetween(20, 1500),
  lengthMm: v.optional(numberBetween(20, 2000)),
  massKg: numberBetween(0, 50),
  material: v.picklist(['PVC', 'EPS', 'EVA', 'PE', 'cork', 'wood']),
})

const cord = v.strictObject({
  ...row,
  name: v.string(),
  material: v.picklist(['cotton', 'jute', 'sisal', 'hemp', 'synthetic']),
  diameterMm: numberBetween(0.2, 20),
  threads: v.optional(wholeBetween(1, 400)),
  massKgPer100M: numberBetween(0.001, 50),
})

const baitHolder = v.strictObject({
  ...row,
  name: v.string(),
  holder: v.picklist(['clip', 'mesh-bag', 'wire-basket', 'jar']),
  massKg: numberBetween(0, 5),
  /** Outline of the holder with bait: diameter and height. */
  diameterMm: numberBetween(5, 500),
  heightMm: numberBetween(5, 500),
  densityKgM3: numberBetween(10, 20000),
})

const price = v.strictObject({
  /** What the price is for: a row's id, or a part's. */
  id: slug,
  each: v.picklist(['piece', 'metre', 'kilogram', 'square-metre']),
  amount: numberBetween(0, 100000),
  currency: v.pipe(v.string(), v.regex(/^[A-Z]{3}$/, 'must be a currency code like AUD')),
})

/** All tables together, built-in rows and the user's merged. */
export const MaterialsSchema = v.strictObject({
  solids: v.array(solid),
  bars: v.array(bar),
  ropes: v.array(rope),
  twines: v.array(twine),
  floats: v.array(floatBody),
  cords: v.array(cord),
  baitHolders: v.array(baitHolder),
  prices: v.array(price),
})

/** The user's own additions, `materials.json`. */
export const OwnMaterialsSchema = v.strictObject({
  format: v.literal('potwright/materials'),
  version: v.literal(1),
  ...v.partial(MaterialsSchema).entries,
})

export type Materials = v.InferOutput<typeof MaterialsSchema>
export type OwnMaterials = v.InferOutput<typeof OwnMaterialsSchema>
export type Solid = Materials['solids'][number]
export type BaitHolderRow = Materials['baitHolders'][number]
export type RopeRow = Materials['ropes'][number]
