import * as v from 'valibot'
import { calendarDay, id, numberBetween, photoFile, shortText, slug, wholeBetween } from './fields'
import { InstalledPartSchema } from './gear'
import { quickCheck, type QuickCheck } from './quick-check'

/*
 * What happened to gear: one line an event, appended and never changed. An event names others by id alone. A
 * correction is an event, and so is taking one back.
 */

/** When it happened, always in UTC to the millisecond, so that text order is time order. */
const moment = v.pipe(
  v.string(),
  v.regex(
    /^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])T([01]\d|2[0-3]):[0-5]\d:[0-5]\d\.\d{3}Z$/,
    'must be a UTC time like 2026-12-05T10:00:00.000Z',
  ),
)

/** The number painted on the float. */
export const floatNumber = v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(12))

const count = wholeBetween(0, 10000)
const note = v.optional(shortText)
const money = numberBetween(0, 1e6)

export const gradeNumbers = [0, 1, 2, 3, 4] as const
const grade = v.picklist(gradeNumbers)

export const storagePlaceNames = ['sun', 'shade', 'indoors'] as const
export const damageKinds = [
  'netting',
  'rope',
  'frame',
  'entrance',
  'float',
  'release-cord',
  'door',
  'bait-holder',
] as const
export const baitStates = ['none', 'some', 'most'] as const
export const replaceReasons = ['planned', 'worn', 'failed'] as const
export const priceUnits = ['piece', 'metre', 'coil', 'panel'] as const

const newPot = v.strictObject({
  pot: id,
  number: floatNumber,
  /** Id of the design it is an instance of. */
  design: id,
  parts: v.pipe(v.array(InstalledPartSchema), v.maxLength(40)),
})

/** What each kind of event says, beside when and where it was written. */
const eventBodies = {
  'add-pots': { pots: v.pipe(v.array(newPot), v.minLength(1), v.maxLength(500)) },
  set: {
    pot: id,
    run: v.optional(id),
    water: v.optional(id),
    depthM: v.optional(numberBetween(0, 400)),
    temperatureC: v.optional(numberBetween(-2, 40)),
    latitudeDeg: v.optional(numberBetween(-90, 90)),
    longitudeDeg: v.optional(numberBetween(-180, 180)),
    bait: v.optional(v.pipe(v.string(), v.maxLength(60))),
    note,
  },
  haul: {
    pot: id,
    run: v.optional(id),
    kept: v.optional(count),
    undersized: v.optional(count),
    female: v.optional(count),
    other: v.optional(count),
    baitLeft: v.optional(v.picklist(baitStates)),
    damage: v.optional(v.pipe(v.array(v.picklist(damageKinds)), v.maxLength(damageKinds.length))),
    note,
  },
  inspect: {
    part: id,
    grade: v.optional(grade),
    diameterLossPct: v.optional(numberBetween(0, 100)),
    brokenBars: v.optional(count),
    note,
  },
  repair: { part: id, what: shortText, cost: v.optional(money), brokenBars: v.optional(count) },
  replace: { part: id, with: InstalledPartSchema, reason: v.picklist(replaceReasons), note },
  clean: { pot: id, note },
  store: { pot: id, where: v.picklist(storagePlaceNames), note },
  lose: { pot: id, note },
  find: { pot: id, note },
  retire: { pot: id, note },
  'swap-part': { part: id, to: id, note },
  photo: {
    pot: id,
    part: v.optional(id),
    file: photoFile,
    caption: note,
  },
  stock: {
    item: slug,
    change: v.optional(numberBetween(-1e6, 1e6)),
    counted: v.optional(numberBetween(0, 1e6)),
    note,
  },
  price: {
    item: slug,
    each: money,
    per: v.picklist(priceUnits),
    /** Metres on a coil, where it is sold so. */
    coilM: v.optional(numberBetween(0.1, 100000)),
    on: v.optional(calendarDay),
    supplierNote: note,
  },
  correct: { target: id, fields: v.record(slugOrField(), v.unknown()), note },
  undo: { target: id, note },
} as const

/** A field's name in an event's body. */
function slugOrField() {
  return v.pipe(v.string(), v.regex(/^[a-z][A-Za-z]{0,39}$/, 'must be the name of a field'))
}

export type EventKind = keyof typeof eventBodies

const envelope = {
  version: v.literal(1),
  id,
  machine: id,
  /** Counts up from 1 in each machine's file. */
  seq: wholeBetween(1, Number.MAX_SAFE_INTEGER),
  at: moment,
}

const ofKind = <K extends EventKind, B extends v.ObjectEntries>(kind: K, body: B) =>
  v.strictObject({ ...body, ...envelope, kind: v.literal(kind) })

export const JournalEventSchema = v.variant('kind', [
  ofKind('set', eventBodies.set),
  ofKind('haul', eventBodies.haul),
  ofKind('add-pots', eventBodies['add-pots']),
  ofKind('inspect', eventBodies.inspect),
  ofKind('repair', eventBodies.repair),
  ofKind('replace', eventBodies.replace),
  ofKind('clean', eventBodies.clean),
  ofKind('store', eventBodies.store),
  ofKind('lose', eventBodies.lose),
  ofKind('find', eventBodies.find),
  ofKind('retire', eventBodies.retire),
  ofKind('swap-part', eventBodies['swap-part']),
  ofKind('photo', eventBodies.photo),
  ofKind('stock', eventBodies.stock),
  ofKind('price', eventBodies.price),
  ofKind('correct', eventBodies.correct),
  ofKind('undo', eventBodies.undo),
])

export type JournalEvent = v.InferOutput<typeof JournalEventSchema>

const byKind: ReadonlyMap<unknown, { schema: v.GenericSchema<unknown, JournalEvent>; quick: QuickCheck }> =
  new Map(
    JournalEventSchema.options.map((schema) => [
      schema.entries.kind.literal,
      { schema, quick: quickCheck(schema) },
    ]),
  )

/**
 * Checks one line of a journal. The same as parsing with the schema, but a line in order is told quickly: a
 * journal has a hundred thousand of them.
 *
 * @param raw what `JSON.parse` returned
 * @returns the event, or what is wrong with it
 */
export function parseEvent(raw: unknown): v.SafeParseResult<v.GenericSchema<unknown, JournalEvent>> {
  const kind = typeof raw === 'object' && raw !== null && 'kind' in raw ? raw.kind : undefined
  const known = byKind.get(kind)
  if (known?.quick(raw)) return { typed: true, success: true, output: raw as JournalEvent, issues: undefined }
  return v.safeParse(known?.schema ?? JournalEventSchema, raw)
}
export type EventOf<K extends EventKind> = Extract<JournalEvent, { kind: K }>

const draftOf = <K extends EventKind, B extends v.ObjectEntries>(kind: K, body: B) =>
  v.strictObject({ ...body, at: v.optional(moment), kind: v.literal(kind) })

export const EventDraftSchema = v.variant('kind', [
  draftOf('set', eventBodies.set),
  draftOf('haul', eventBodies.haul),
  draftOf('add-pots', eventBodies['add-pots']),
  draftOf('inspect', eventBodies.inspect),
  draftOf('repair', eventBodies.repair),
  draftOf('replace', eventBodies.replace),
  draftOf('clean', eventBodies.clean),
  draftOf('store', eventBodies.store),
  draftOf('lose', eventBodies.lose),
  draftOf('find', eventBodies.find),
  draftOf('retire', eventBodies.retire),
  draftOf('swap-part', eventBodies['swap-part']),
  draftOf('photo', eventBodies.photo),
  draftOf('stock', eventBodies.stock),
  draftOf('price', eventBodies.price),
  draftOf('correct', eventBodies.correct),
  draftOf('undo', eventBodies.undo),
])

/** What is asked to be written: an event without what the writer adds; its time may be given for what was earlier. */
export type EventDraft = v.InferOutput<typeof EventDraftSchema>
