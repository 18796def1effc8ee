import type { Check } from '@shared/schema/rule-check'
import type { Facts } from './facts'
import type { Outcome } from './outcome'

type HoursCheck = Extract<Check, { op: 'hours' }>
type TimeOfDay = HoursCheck['from']

const part = 'trip'

/**
 * Holds the hours in which gear is worked against the hours allowed.
 *
 * A time by the sun needs sunrise and sunset at the place, which the trip does not carry; it stays unknown.
 */
export function compareHours(check: HoursCheck, { trip }: Facts): Outcome {
  const lacking: string[] = []
  if (trip?.workFrom === undefined || trip.workTo === undefined)
    lacking.push('the hours in which the gear is worked')
  const [from, to] = [minutesOf(check.from), minutesOf(check.to)]
  if (from === undefined || to === undefined) lacking.push('sunrise and sunset at the place')
  if (trip?.workFrom === undefined || trip.workTo === undefined || from === undefined || to === undefined)
    return { state: 'unknown', missing: lacking, part }
  const isInside = clockMinutes(trip.workFrom) >= from && clockMinutes(trip.workTo) <= to
  return {
    state: isInside ? 'holds' : 'fails',
    says: `Gear is worked from ${trip.workFrom} to ${trip.workTo}.${isInside ? '' : ' Keep to the hours allowed.'}`,
    part,
    actual: `${trip.workFrom}-${trip.workTo}`,
    limit: `${clock(from)}-${clock(to)}`,
  }
}

const minutesOf = (time: TimeOfDay) => (time.by === 'clock' ? clockMinutes(time.at) : undefined)

const clockMinutes = (at: string) => Number(at.slice(0, 2)) * 60 + Number(at.slice(3))

const clock = (minutes: number) =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
