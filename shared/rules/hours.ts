import type { Check } from '@shared/schema/rule-check'
import { daylight } from '@shared/tides/daylight'
import { clockAt, localDays } from '@shared/tides/local-time'
import { positionOf, waterZone } from '@shared/tides/place'
import type { Facts } from './facts'
import type { Outcome } from './outcome'

type HoursCheck = Extract<Check, { op: 'hours' }>
type TimeOfDay = HoursCheck['from']

const part = 'trip'

/**
 * Holds the hours in which gear is worked against the hours allowed, by the clock or by the sun at the water.
 *
 * @param check times of day between which gear may be worked
 * @param facts the trip's hours and date, and the water's position
 * @returns whether both ends are inside; unknown without the hours, or without the place where the sun decides
 */
export function compareHours(check: HoursCheck, facts: Facts): Outcome {
  const { workFrom, workTo } = facts.trip ?? {}
  if (workFrom === undefined || workTo === undefined)
    return { state: 'unknown', missing: ['the hours in which the gear is worked'], part }
  const [from, to] = [minutesOf(check.from, facts), minutesOf(check.to, facts)]
  if (from === undefined || to === undefined)
    return { state: 'unknown', missing: ['sunrise and sunset: the date and the position of the water'], part }
  const isInside =
    clockMinutes(workFrom) >= from &&
    clockMinutes(workTo) <= to &&
    clockMinutes(workFrom) <= clockMinutes(workTo)
  const allowed = `${clock(from)} to ${clock(to)}`
  return {
    state: isInside ? 'holds' : 'fails',
    says: `Gear is worked from ${workFrom} to ${workTo}; ${allowed} is allowed that day.${isInside ? '' : ' Keep to those hours.'}`,
    part,
    actual: `${workFrom} to ${workTo}`,
    limit: allowed,
  }
}

function minutesOf(time: TimeOfDay, facts: Facts): number | undefined {
  if (time.by === 'clock') return clockMinutes(time.at)
  const sun = sunMinutes(facts)
  return sun && sun[time.by] + time.plusMinutes
}

/** Sunrise and sunset by the place's own clock [minutes after midnight]; the water has to state its position. */
function sunMinutes({ trip, water }: Facts): { sunrise: number; sunset: number } | undefined {
  const position = water && positionOf(water, {})
  if (!trip?.date || !position) return undefined
  const zone = waterZone(water, {})
  const day = localDays(zone, trip.date, 1)
  if (!day.ok) return undefined
  const [light] = daylight(day.value, zone, position)
  if (!light) return undefined
  return {
    sunrise: clockMinutes(clockAt(zone, light.fromMs)),
    sunset: clockMinutes(clockAt(zone, light.toMs)),
  }
}

const clockMinutes = (at: string) => Number(at.slice(0, 2)) * 60 + Number(at.slice(3, 5))

const clock = (minutes: number) =>
  `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`
