import * as v from 'valibot'
import { season } from './rule-check'
import { name, numberBetween, shortText, slug, wholeBetween } from './fields'
import { partialDate, ruleConfidences, sourceIndex, userMark } from './rule-fields'

/* What may be kept, and how it is measured: the Gauge's side of a rule pack. */

export const measureMethods = [
  'width-tip-to-tip',
  'width-notch-to-notch',
  'width-points-out',
  'width-points-in',
  'width-widest',
  'width-base-of-spines',
  'length-notch-to-rear',
  'length-front-to-rear',
  'length-eye-to-rear',
  'length-without-spines',
  'claw-length',
  'tail-length',
  'tail-width',
  'not-found',
] as const
export type MeasureMethod = (typeof measureMethods)[number]

const bagUnits = [
  'crabs',
  'lobsters',
  'animals',
  'claws',
  'dozen',
  'bushel',
  'litre',
  'gallon',
  'gallon-claws',
  'kg',
] as const

const mayKeep = v.picklist(['yes', 'no', 'not-found'])

const basis = {
  sources: v.optional(v.array(sourceIndex)),
  confidence: v.optional(v.picklist(ruleConfidences)),
  note: v.optional(shortText),
}

const measured = v.pipe(v.number(), v.finite(), v.minValue(0.1), v.maxValue(1000))

/** A size limit. `sex` left out means either sex; several limits of one species are told apart by sex, zone or date. */
const sizeLimit = v.strictObject({
  sex: v.optional(v.picklist(['male', 'female'])),
  min: v.optional(measured),
  max: v.optional(measured),
  unit: v.picklist(['mm', 'cm', 'in']),
  zones: v.optional(v.pipe(v.array(slug), v.minLength(1))),
  seasons: v.optional(v.pipe(v.array(season), v.minLength(1))),
  ...basis,
})

/** A number that may be kept. `value` left out: the source states that there is no limit. */
const bagLimit = v.strictObject({
  scope: v.picklist(['person', 'boat', 'licence']),
  kind: v.picklist(['bag', 'possession']),
  value: v.optional(numberBetween(0, 100000)),
  unit: v.picklist(bagUnits),
  per: v.optional(v.picklist(['day', 'week', '24-hours'])),
  sex: v.optional(v.picklist(['male', 'female'])),
  fromPeople: v.optional(wholeBetween(1, 100)),
  /** Counted together with these species, by slug. */
  combinedWith: v.optional(v.array(slug)),
  zones: v.optional(v.pipe(v.array(slug), v.minLength(1))),
  ...basis,
})

export const species = v.strictObject({
  id: v.pipe(
    v.string(),
    v.regex(/^[A-Z]{2}(-[A-Z0-9]{1,4})?:[a-z0-9-]+$/, 'must be an id like US-WA:sp-red-rock'),
  ),
  /** Name that a trip uses for it: `metacarcinus-magister`. */
  slug,
  scientificName: name,
  commonNames: v.pipe(v.array(name), v.minLength(1)),
  zones: v.optional(v.pipe(v.array(slug), v.minLength(1))),
  seasons: v.optional(v.pipe(v.array(season), v.minLength(1))),
  from: v.optional(partialDate),
  to: v.optional(partialDate),
  measure: v.strictObject({ method: v.picklist(measureMethods), how: shortText, ...basis }),
  sizes: v.array(sizeLimit),
  keep: v.strictObject({
    male: mayKeep,
    female: mayKeep,
    eggBearing: mayKeep,
    softShell: v.optional(mayKeep),
  }),
  /** How the sex rule reads, in plain words; where it may not be kept it says so. */
  sexRule: v.optional(shortText),
  bags: v.array(bagLimit),
  sources: v.pipe(v.array(sourceIndex), v.minLength(1, 'must name a source')),
  confidence: v.picklist(ruleConfidences),
  note: v.optional(shortText),
  user: v.optional(userMark),
})

export type Species = v.InferOutput<typeof species>
export type SizeLimit = v.InferOutput<typeof sizeLimit>
export type BagLimit = v.InferOutput<typeof bagLimit>
