import { DateTime } from 'luxon'
import { getTimes } from 'suncalc'
import type { TimeSpan } from './local-time'
import type { Position } from './place'

/**
 * Daylight over a span of time, sunrise to sunset of each local day. A polar day is light from end to end, a polar
 * night has no entry.
 *
 * @param span     time asked for, from one local midnight to another [ms since 1970 UTC]
 * @param zone     IANA zone of the place
 * @param position where the place lies
 * @returns times of daylight in order; within about a minute in middle latitudes
 * @source suncalc 2.0 (upper limb on the horizon, standard refraction)
 */
export function daylight(
  { fromMs, toMs }: TimeSpan,
  zone: string,
  { latitudeDeg, longitudeDeg }: Position,
): TimeSpan[] {
  const light: TimeSpan[] = []
  let day = DateTime.fromMillis(fromMs, { zone }).startOf('day')
  while (day.toMillis() < toMs) {
    const next = day.plus({ days: 1 })
    const noon = new Date((day.toMillis() + next.toMillis()) / 2)
    const { sunrise, sunset, alwaysUp } = getTimes(noon, latitudeDeg, longitudeDeg)
    if (alwaysUp === true) light.push({ fromMs: day.toMillis(), toMs: next.toMillis() })
    else if (sunrise && sunset) light.push({ fromMs: sunrise.getTime(), toMs: sunset.getTime() })
    day = next
  }
  return light
}
