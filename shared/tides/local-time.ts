import { DateTime } from 'luxon'
import { err, ok, type Result } from '@shared/units/result'

/** Astronomical series behind the predictions are good from 1900 to 2100. */
const firstYear = 1900
const lastYear = 2100

export interface TimeSpan {
  readonly fromMs: number
  readonly toMs: number
}

/**
 * Whole calendar days at a place, from midnight to midnight by its own clock: 23 or 25 hours long where the clock
 * changes, and 24 otherwise.
 *
 * @param zone IANA zone name
 * @param day  first day, `2026-12-05`
 * @param days number of days, 1 … 400
 * @returns moments [ms since 1970 UTC], or what is wrong with the day or the zone
 */
export function localDays(zone: string, day: string, days: number): Result<TimeSpan> {
  const start = DateTime.fromISO(day, { zone })
  if (!start.isValid)
    return err({
      code: 'invalid',
      message: `There is no day ${day} in the time zone ${zone}. Nothing was predicted.`,
      path: 'from',
    })
  if (start.year < firstYear || start.plus({ days }).year > lastYear)
    return err({
      code: 'invalid',
      message: `Tides can be predicted for ${firstYear} to ${lastYear}; ${day} lies outside. Nothing was predicted.`,
      path: 'from',
    })
  const from = start.startOf('day')
  return ok({ fromMs: from.toMillis(), toMs: from.plus({ days }).startOf('day').toMillis() })
}

/** The calendar day at a place at a moment, `2026-12-05`. */
export function dayAt(zone: string, timeMs: number): string {
  return DateTime.fromMillis(timeMs, { zone }).toFormat('yyyy-MM-dd')
}

export interface ClockFormat {
  /** Hours that the reader's clock counts to. */
  readonly hours?: 12 | 24
  /** With the zone's short name. */
  readonly withZone?: boolean
}

/** Clock time at a place: `17:47`, `5:47 PM`, with its zone `17:47 PST`. */
export function clockAt(
  zone: string,
  timeMs: number,
  { hours = 24, withZone = false }: ClockFormat = {},
): string {
  // Rounded to the minute, as tide tables are: 05:46:40 is printed 05:47.
  const at = DateTime.fromMillis(Math.round(timeMs / 60_000) * 60_000, { zone, locale: 'en' })
  return at.toFormat(`${hours === 24 ? 'HH:mm' : 'h:mm a'}${withZone ? ' ZZZZ' : ''}`)
}
