import * as v from 'valibot'
import { EventDraftSchema, JournalEventSchema } from '@shared/schema/journal'
import { call, nothing } from './call'

export const journal = {
  /** Every event of every machine, unsorted; the same event may come twice. */
  'journal:list': call(
    nothing,
    v.strictObject({
      events: v.array(JournalEventSchema),
      problems: v.array(v.strictObject({ file: v.string(), line: v.number(), message: v.string() })),
    }),
  ),
  /** Adds events to this machine's log. They are safe on the disk when the answer comes. */
  'journal:append': call(
    v.strictObject({ events: v.pipe(v.array(EventDraftSchema), v.minLength(1), v.maxLength(2000)) }),
    v.strictObject({ events: v.array(JournalEventSchema) }),
  ),
  /** Takes lines of this machine's log that cannot be read out of the way; they are kept in a file beside it. */
  'journal:repair': call(nothing, v.strictObject({ setAside: v.number() })),
}
