import * as v from 'valibot'
import { calendarDay, wholeBetween } from './fields'

/* Field kinds that rules and species entries of a pack share. */

/** How sure a figure is: read in a source, recalled and not read, or sources that disagree. */
export const ruleConfidences = ['read', 'memory', 'conflicting'] as const

/** Place in the pack's own list of sources, counted from 0. */
export const sourceIndex = wholeBetween(0, 500)

/** Words of some length, as a note. */
export const longText = v.pipe(v.string(), v.maxLength(1200))

/** What marks an entry as the user's: when they checked it, and what it stands in place of. */
export const userMark = v.strictObject({
  date: calendarDay,
  note: v.optional(longText),
  replaces: v.optional(longText),
})

/** A date known to the day, month or year: `2018-07-01`, `2018-07`, `2018`. */
export const partialDate = v.pipe(
  v.string(),
  v.regex(/^\d{4}(-\d{2}(-\d{2})?)?$/, 'must be a date like 2018-07-01, 2018-07 or 2018'),
  v.check((date) => isRealDate(date), 'is not a date of the calendar'),
)

function isRealDate(date: string): boolean {
  const first = firstDay(date)
  const at = new Date(`${first}T00:00:00Z`)
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(first)
}

/** First day that a partial date can mean. */
export function firstDay(date: string): string {
  return `${date}${'-01-01'.slice(date.length - 4)}`
}

/** Last day that a partial date can mean; the end of a month is the day before the next month. */
export function lastDay(date: string): string {
  if (date.length === 10) return date
  if (date.length === 4) return `${date}-12-31`
  const [year, month] = [Number(date.slice(0, 4)), Number(date.slice(5, 7))]
  return new Date(Date.UTC(year, month, 0)).toISOString().slice(0, 10)
}
