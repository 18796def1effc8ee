import * as v from 'valibot'

/** Field kinds shared by every document: bounded numbers in the unit of the field's name, ids, short texts. */
const finite = v.pipe(v.number(), v.finite())

export const numberBetween = (min: number, max: number) =>
  v.pipe(finite, v.minValue(min, `must be at least ${min}`), v.maxValue(max, `must be at most ${max}`))

export const wholeBetween = (min: number, max: number) =>
  v.pipe(
    v.number(),
    v.integer('must be a whole number'),
    v.minValue(min, `must be at least ${min}`),
    v.maxValue(max, `must be at most ${max}`),
  )

/** Letters, digits, dash and underscore: safe as a file name on every system. */
export const id = v.pipe(v.string(), v.regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}$/, 'must be a plain id'))

/** The file of a photo in the data folder; a name and nothing of a path. */
export const photoFile = v.pipe(
  v.string(),
  v.regex(/^[A-Za-z0-9][A-Za-z0-9_-]{0,63}\.(jpg|png|webp)$/, 'must be a photo in the data folder'),
)

export const name = v.pipe(v.string(), v.trim(), v.minLength(1, 'must not be empty'), v.maxLength(120))

export const shortText = v.pipe(v.string(), v.maxLength(400))

export const bearingDeg = numberBetween(0, 360)

/** A calendar day, `2026-12-05`, that exists. */
export const calendarDay = v.pipe(
  v.string(),
  v.isoDate('must be a date like 2026-12-05'),
  v.check(isRealDay, 'is not a day of the calendar'),
)

function isRealDay(day: string): boolean {
  const at = new Date(`${day}T00:00:00Z`)
  return !Number.isNaN(at.getTime()) && at.toISOString().startsWith(day)
}

/** ISO 3166-1 or 3166-2 code of the place whose rules apply. */
export const regionCode = v.pipe(
  v.string(),
  v.regex(/^[A-Z]{2}(-[A-Z0-9]{1,4})?$/, 'must be a region code like US-WA'),
)

export const slug = v.pipe(
  v.string(),
  v.regex(/^[a-z0-9][a-z0-9-]{0,63}$/, 'must be a lower-case name like puget-sound'),
)
