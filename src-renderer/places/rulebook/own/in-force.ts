import { firstDay, lastDay, partialDate } from '@shared/schema/rule-fields'
import * as v from 'valibot'
import type { Result } from '@shared/units/result'
import { formWords as w } from '../form-words'

/** From when and until when something is in force, as the form holds it. */
export interface InForceDraft {
  readonly from: string
  readonly to: string
}

/** The dates that are given; refused where one is none of the calendar, or the end comes before the start. */
export function inForceOf(draft: InForceDraft): Result<{ from?: string; to?: string }> {
  const [from, to] = [draft.from.trim(), draft.to.trim()]
  const given = [from, to].filter((date) => date !== '')
  const isFine =
    given.every((date) => v.is(partialDate, date)) &&
    (from === '' || to === '' || firstDay(from) <= lastDay(to))
  return isFine
    ? { ok: true, value: { ...(from === '' ? {} : { from }), ...(to === '' ? {} : { to }) } }
    : { ok: false, error: { code: 'invalid', message: w.needsDate } }
}
