import type { HistoryLine } from '@shared/journal/history'
import type { LockerState, RunState } from '@shared/journal/locker-state'
import { calendarDay, id, photoFile, shortText, wholeBetween } from '@shared/schema/fields'
import { InstalledPartSchema } from '@shared/schema/gear'
import { EventDraftSchema, floatNumber, replaceReasons, type JournalEvent } from '@shared/schema/journal'
import * as v from 'valibot'
import { base64Text, call, nothing } from './call'

/** The state is our own answer, made by folding what was checked when it was read. */
const lockerState = v.custom<LockerState>(isRecord)
const historyLine = v.custom<HistoryLine>(isRecord)

function isRecord(value: unknown): boolean {
  return typeof value === 'object' && value !== null
}

const freshPart = v.omit(InstalledPartSchema, ['id'])

/** The locker after a change, and what was written. */
const changed = v.strictObject({ state: lockerState, events: v.array(id) })

const exportKinds = ['parts', 'events', 'due', 'shopping'] as const

export const locker = {
  /** Every pot, part, stock and problem that the history comes to, its latest runs, and files not read to the end. */
  'locker:state': call(nothing, v.strictObject({ state: lockerState, trouble: v.array(v.string()) })),
  /** Adds pots of one design under their numbers, each with parts like these. */
  'locker:add-pots': call(
    v.strictObject({
      pots: v.pipe(
        v.array(
          v.strictObject({
            number: floatNumber,
            design: id,
            parts: v.pipe(v.array(freshPart), v.maxLength(40)),
          }),
        ),
        v.minLength(1),
        v.maxLength(500),
      ),
    }),
    changed,
  ),
  /** Takes a part off and puts a new one on. */
  'locker:replace': call(
    v.strictObject({
      part: id,
      with: freshPart,
      reason: v.picklist(replaceReasons),
      fromStock: v.optional(v.boolean()),
    }),
    changed,
  ),
  /** Writes events, refused as a whole where one does not fit the history. */
  'locker:record': call(
    v.strictObject({ events: v.pipe(v.array(EventDraftSchema), v.minLength(1), v.maxLength(2000)) }),
    changed,
  ),
  /** The history, newest first. */
  'locker:history': call(
    v.strictObject({ pot: v.optional(id), limit: wholeBetween(1, 5000) }),
    v.array(historyLine),
  ),
  /** One event as it was written, however long ago. */
  'locker:event': call(v.strictObject({ event: id }), v.custom<JournalEvent>(isRecord)),
  /** Runs, the latest first. */
  'locker:runs': call(
    v.strictObject({ skip: wholeBetween(0, 1e6), limit: wholeBetween(1, 500) }),
    v.array(v.custom<RunState>(isRecord)),
  ),
  /** A table for a spreadsheet. */
  'locker:export': call(
    v.strictObject({
      what: v.picklist(exportKinds),
      aheadMonths: v.optional(wholeBetween(1, 24)),
      on: v.optional(calendarDay),
    }),
    v.strictObject({ fileName: v.string(), text: v.string() }),
  ),
}

/** A photo travels as base64; 12 MB is more than a telephone makes. */
const base64 = base64Text(16_000_000, 'must be a photo')

export const photos = {
  'photos:add': call(
    v.strictObject({ pot: id, part: v.optional(id), caption: v.optional(shortText), base64 }),
    v.strictObject({ state: lockerState, file: v.string() }),
  ),
  'photos:get': call(
    v.strictObject({ file: photoFile }),
    v.strictObject({ type: v.string(), base64: v.string() }),
  ),
}
