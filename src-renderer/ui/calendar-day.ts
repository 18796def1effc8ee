/**
 * A calendar day as people here write it. One known to the month or the year only, and words in place of a date, stand
 * as they are.
 */
export function sayCalendarDay(day: string, month: 'long' | 'short' = 'long'): string {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(day)) return day
  // A day has no clock: it is the same day wherever it is read.
  const at = new Date(`${day}T00:00:00Z`)
  return at.toLocaleDateString(undefined, { day: 'numeric', month, year: 'numeric', timeZone: 'UTC' })
}

/** A day of any year, `12-01`, as people here write it. */
export function sayDayOfYear(day: string): string {
  const at = new Date(`2024-${day}T00:00:00Z`)
  return at.toLocaleDateString(undefined, { day: 'numeric', month: 'long', timeZone: 'UTC' })
}
