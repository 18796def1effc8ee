import { getTimes } from 'suncalc'
import { DateTime } from 'luxon'

/** From sunrise to sunset on one day; a polar day is light from end to end, a polar night has no entry. */
export interface Daylight {
  readonly fromMs: number
  readonly toMs: number
}

/**
 * Daylight over a span of time, sunrise to sunset of each local day.
 *
 * @param fromMs       start, a local midnight [ms since 1970 UTC]
 * @param toMs         end [ms]
 * @param zone         IANA zone of the place
 * @param latitudeDeg  latitude, −90 … 90
 * @param longitudeDeg longitude, −180 … 180
 * @returns times of daylight in order; within about a minute in middle latitudes
 * @source suncalc 2.0 (upper limb on the horizon, standard refraction)
 */
export function daylight(
  fromMs: number,
  toMs: number,
  zone: string,
  latitudeDeg: number,
  longitudeDeg: number,
): Daylight[] {
  const light: Daylight[] = []
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
