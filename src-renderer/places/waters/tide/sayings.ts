import type { WorkWindow } from '@shared/match/windows'
import { DateTime } from 'luxon'
import { reader } from '@renderer/ui/reader.svelte'
import { tideWords as w } from '../words'

/** A day at the place, as `Sat 5 Dec`. */
export const sayDay = (zone: string, atMs: number) =>
  DateTime.fromMillis(atMs, { zone, locale: 'en' }).toFormat('ccc d LLL')

/** A stretch of time; the day is named again only where it changes. */
export function saySpan(zone: string, { fromMs, toMs }: { fromMs: number; toMs: number }): string {
  const [first, last] = [sayDay(zone, fromMs), sayDay(zone, toMs)]
  return `${first} ${reader.clock(zone, fromMs)}-${first === last ? '' : `${last} `}${reader.clockWithZone(zone, toMs)}`
}

/** Three digits, as a course is steered: 007°. */
const sayCourse = (deg: number) => `${String(Math.round(deg) % 360).padStart(3, '0')}°`

/** What there is to know of a window besides its time. */
export function sayWindow(zone: string, window: WorkWindow): string {
  const { slackMs, strongestMps, courseAtStartDeg: start, courseAtEndDeg: end, inDaylight } = window
  const [first, last] = [start, end].map((deg) => (deg === undefined ? undefined : sayCourse(deg)))
  const course = first ?? last
  return [
    slackMs === undefined ? '' : w.slackAt(reader.clock(zone, slackMs)),
    w.strongest(reader.say(strongestMps, 'm/s')),
    first && last && first !== last ? w.courseTurns(first, last) : course ? w.course(course) : '',
    inDaylight ? '' : w.inTheDark,
  ]
    .filter(Boolean)
    .join(', ')
}

/** A height of tide or a depth, in metres or feet however small: −0.07 m, never −68 mm. */
export const sayHeight = (m: number) => `${reader.field(m, 'm').replace('-', '−')} ${reader.symbol('m')}`

/** A signed stream in words: flood, ebb or slack. */
export function sayStream(mps: number): string {
  if (Math.abs(mps) < 0.005) return w.slack
  return `${mps > 0 ? w.flood : w.ebb} ${reader.say(Math.abs(mps), 'm/s')}`
}
