import { DateTime } from 'luxon'
import type { PlotTick } from './plot-model'

const HOURS = [1, 3, 6, 12, 24, 48, 168]

/**
 * Ticks at round hours of the local day, about one for every 70 pixels; a midnight carries its date.
 *
 * @param from, to milliseconds since 1970
 * @param zone     time zone of the place, as `America/Los_Angeles`
 * @param most     how many ticks there is room for
 * @param hours    hours that the reader's clock counts to
 */
export function timeTicks(
  from: number,
  to: number,
  { zone, most, hours: clock }: { zone: string; most: number; hours: 12 | 24 },
): PlotTick[] {
  const hours = (to - from) / 3_600_000
  const every = HOURS.find((step) => hours / step <= most) ?? 336
  const ticks: PlotTick[] = []
  let at: DateTime = DateTime.fromMillis(from, { zone }).startOf('day')
  while (at.toMillis() <= to) {
    const midnight = at.hour === 0
    if (at.toMillis() >= from)
      ticks.push({
        x: at.toMillis(),
        label: at.toFormat(midnight ? 'ccc d LLL' : clock === 24 ? 'HH:mm' : 'h a'),
        strong: midnight,
      })
    at = every >= 24 ? at.plus({ days: every / 24 }) : nextHour(at, every)
  }
  return ticks
}

/** The next round hour by the wall clock, so that a change of the clock does not shift the rest of the day. */
function nextHour(at: DateTime, every: number): DateTime {
  const hour = Math.floor(at.hour / every) * every + every
  return hour >= 24 ? at.plus({ days: 1 }).startOf('day') : at.set({ hour })
}
