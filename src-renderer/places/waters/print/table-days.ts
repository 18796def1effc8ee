import type { HeightEvent } from '@shared/tides/predict-water'
import type { StreamEvent } from '@shared/tides/stream'
import { dayAt, type TimeSpan } from '@shared/tides/local-time'
import { overlap } from '@shared/match/bands'
import type { TidePicture } from '@renderer/state/tide-picture'
import { reader } from '@renderer/ui/reader.svelte'
import { sayDay } from '../tide/sayings'
import { printWords as w } from './words'

/** One local day of a table or a card. */
export interface TableDay extends TimeSpan {
  readonly name: string
  /** Sunrise to sunset in words; empty where the place's position is not known. */
  readonly light: string
  readonly heights: readonly HeightEvent[]
  readonly slacks: readonly StreamEvent[]
  readonly runs: readonly StreamEvent[]
  /** When the pot holds and its float shows, in words. */
  readonly works: readonly string[]
}

/** The picture cut into local days, each with what happens on it. */
export function tableDays({ prediction, light, pot }: TidePicture): TableDay[] {
  const { zone, fromMs, toMs, heightEvents, streamEvents } = prediction
  return midnights(zone, fromMs, toMs).map((day) => {
    const within = ({ timeMs }: { timeMs: number }) => timeMs >= day.fromMs && timeMs < day.toMs
    const sun = light.find((span) => span.fromMs >= day.fromMs && span.fromMs < day.toMs)
    return {
      ...day,
      name: sayDay(zone, day.fromMs),
      light: sun ? `${reader.clock(zone, sun.fromMs)}-${reader.clock(zone, sun.toMs)}` : '',
      heights: heightEvents.filter(within),
      slacks: streamEvents.filter((event) => event.kind === 'slack' && within(event)),
      runs: streamEvents.filter(
        (event) => (event.kind === 'max-flood' || event.kind === 'max-ebb') && within(event),
      ),
      works: pot ? overlap(pot.windows.both, [day]).map((span) => sayWithin(zone, day, span)) : [],
    }
  })
}

/** A stretch of one day; the whole of it is no stretch from midnight to midnight. */
function sayWithin(zone: string, day: TimeSpan, { fromMs, toMs }: TimeSpan): string {
  if (fromMs <= day.fromMs && toMs >= day.toMs) return w.allDay
  return `${reader.clock(zone, fromMs)}-${reader.clock(zone, toMs)}`
}

const hourMs = 3_600_000

/** Local days of a span that runs from midnight to midnight; a day may have 23 or 25 hours. */
function midnights(zone: string, fromMs: number, toMs: number): TimeSpan[] {
  const days: TimeSpan[] = []
  let start = fromMs
  while (start < toMs) {
    const today = dayAt(zone, start)
    let next = start + 23 * hourMs
    while (next < toMs && dayAt(zone, next) === today) next += hourMs / 2
    days.push({ fromMs: start, toMs: Math.min(next, toMs) })
    start = next
  }
  return days
}
