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

const fromSunday = ['sunday', 'monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday'] as const

function weekdayOf(date: string): (typeof weekdays)[number] {
  const day = fromSunday[new Date(`${date}T00:00:00Z`).getUTCDay()]
  if (!day) throw new RangeError(`weekdayOf: ${date} is not a date`)
  return day
}

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
