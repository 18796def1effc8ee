import type { Check, weekdays } from '@shared/schema/rule-check'
import type { Outcome } from './outcome'

type Season = { readonly from: string; readonly to: string }

/** Whether a date falls in a season of the year, ends included; one that passes the new year wraps. */
export function inSeason(date: string, season: Season): boolean {
  const day = date.slice(5)
  return season.from <= season.to
    ? day >= season.from && day <= season.to
    : day >= season.from || day <= season.to
}

const part = 'trip'

/** Holds a trip's date against the seasons in which gear may, or may not, be used. */
export function compareSeason(
  check: Extract<Check, { op: 'open' | 'closed' }>,
  date: string | undefined,
): Outcome {
  if (date === undefined) return { state: 'unknown', missing: ['the date'], part }
  const inside = check.seasons.some((season) => inSeason(date, season))
  const seasons = check.seasons.map(spokenSeason).join(' and ')
  const isOpen = check.op === 'open' ? inside : !inside
  return {
    state: isOpen ? 'holds' : 'fails',
    says: `${spokenDay(date.slice(5))} is ${isOpen ? 'open' : 'closed'}.${isOpen ? '' : ' Choose another day.'}`,
    part,
    actual: date,
    limit: `${check.op} ${seasons}`,
  }
}

/** Holds a trip's date against days of the week on which gear may not be used. */
export function compareWeekday(
  check: Extract<Check, { op: 'closed-days' }>,
  date: string | undefined,
): Outcome {
  if (date === undefined) return { state: 'unknown', missing: ['the date'], part }
  const day = weekdayOf(date)
  const isClosed = check.days.includes(day)
  const spoken = `${day.charAt(0).toUpperCase()}${day.slice(1)}`
  return {
    state: isClosed ? 'fails' : 'holds',
    says: `${date} is a ${spoken}.${isClosed ? ' Choose another day.' : ''}`,
    part,
    actual: day,
    limit: `not ${check.days.join(', ')}`,
  }
}

/** Holds a trip's date against days in a row that start on a weekday of a month, this year or the one before. */
export function compareRun(check: Extract<Check, { op: 'closed-from' }>, date: string | undefined): Outcome {
  if (date === undefined) return { state: 'unknown', missing: ['the date'], part }
  const day = dayNumber(date)
  const year = Number(date.slice(0, 4))
  const isClosed = [year - 1, year].some((one) => {
    const first = nthWeekday(one, check)
    return day >= first && day < first + check.days
  })
  return {
    state: isClosed ? 'fails' : 'holds',
    says: `${spokenDay(date.slice(5))} is ${isClosed ? 'closed' : 'open'}.${isClosed ? ' Choose another day.' : ''}`,
    part,
    actual: date,
    limit: `closed ${check.days} days from the ${ordinals[check.nth - 1] ?? ''} ${check.weekday} of ${months[check.month - 1] ?? ''}`,
  }
}

const fromSunday = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'] as const

function weekdayOf(date: string): (typeof weekdays)[number] {
  const day = fromSunday[new Date(`${date}T00:00:00Z`).getUTCDay()]
  if (!day) throw new RangeError(`weekdayOf: ${date} is not a date`)
  return day
}

/** Days since 1 January 1970. */
const dayNumber = (date: string) => Date.parse(`${date}T00:00:00Z`) / 86_400_000

/** The nth of a weekday in a month of a year, as a day number. */
function nthWeekday(year: number, { month, nth, weekday }: Extract<Check, { op: 'closed-from' }>): number {
  const first = Date.UTC(year, month - 1, 1) / 86_400_000
  // 1 January 1970 was a Thursday, the fifth of the list.
  const daysOn = (fromSunday.indexOf(weekday) - ((first + 4) % 7) + 7) % 7
  return first + daysOn + 7 * (nth - 1)
}

const ordinals = ['first', 'second', 'third', 'fourth'] as const

const months = [
  'January',
  'February',
  'March',
  'April',
  'May',
  'June',
  'July',
  'August',
  'September',
  'October',
  'November',
  'December',
]

/** "12-01" as "1 December". */
function spokenDay(day: string): string {
  return `${Number(day.slice(3))} ${months[Number(day.slice(0, 2)) - 1] ?? ''}`
}

const spokenSeason = (season: Season) => `${spokenDay(season.from)} to ${spokenDay(season.to)}`
