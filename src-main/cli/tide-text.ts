import { clockAt, dayAt } from '@shared/tides/local-time'
import type { PotWindows, WorkWindow } from '@shared/match/windows'
import type { TimeSpan } from '@shared/tides/local-time'
import type { WaterPrediction } from '@shared/tides/predict-water'
import { formatQuantity } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'

/** What happens at a water, a line an event, under a heading for each local day. */
export function tideText(
  prediction: WaterPrediction,
  light: readonly TimeSpan[],
  locale: ReaderLocale,
): string {
  const { zone, streamEvents, heightEvents } = prediction
  const heights = heightEvents.map(({ kind, timeMs, heightM }) => ({
    timeMs,
    text: `${kind === 'high-water' ? 'high water' : 'low water'}  ${formatQuantity(heightM, 'm', locale).replace('-', '−')}`,
  }))
  const streams = streamEvents.map(({ kind, timeMs, mps, next }) => ({
    timeMs,
    text: kind === 'slack' ? `slack, ${next ?? ''} begins` : `${streamNames[kind]}  ${speed(mps, locale)}`,
  }))
  const suns = light.flatMap(({ fromMs, toMs }) => [
    { timeMs: fromMs, text: 'sunrise' },
    { timeMs: toMs, text: 'sunset' },
  ])
  const lines: string[] = []
  let day = ''
  for (const { timeMs, text } of [...heights, ...streams, ...suns].sort((a, b) => a.timeMs - b.timeMs)) {
    const today = dayAt(zone, timeMs)
    if (today !== day) lines.push('', today)
    day = today
    lines.push(`  ${clockAt(zone, timeMs, { withZone: true })}  ${text}`)
  }
  const { missing, notes } = prediction
  return [...lines, '', ...missing.map((what) => `Cannot tell: ${what} is not known.`), ...notes].join('\n')
}

const streamNames = {
  'max-flood': 'strongest flood',
  'max-ebb': 'strongest ebb',
  'least-flood': 'weakest flood',
  'least-ebb': 'weakest ebb',
} as const

const speed = (mps: number, locale: ReaderLocale) => formatQuantity(Math.abs(mps), 'm/s', locale)

/** The windows of one pot: when it holds and shows its float, when to set and when to haul. */
export function windowsText(name: string, windows: PotWindows, zone: string, locale: ReaderLocale): string {
  const bands = windows.both.map(
    ({ fromMs, toMs }) => `  ${dayAt(zone, fromMs)} ${clockAt(zone, fromMs)} to ${until(zone, fromMs, toMs)}`,
  )
  return [
    `${name} holds and its float shows, cautiously reckoned:`,
    ...(bands.length > 0 ? bands : ['  at no time shown']),
    `Set:  ${windows.set ? windowText(windows.set, zone, locale) : 'no window'}`,
    `Haul: ${windows.haul ? windowText(windows.haul, zone, locale) : 'no window'}`,
    ...(windows.holdsThroughout === false ? ['It may move between the two: the current outruns it.'] : []),
  ].join('\n')
}

function windowText(window: WorkWindow, zone: string, locale: ReaderLocale): string {
  const { fromMs, toMs, slackMs, inDaylight, strongestMps, courseAtStartDeg, courseAtEndDeg } = window
  return [
    `${dayAt(zone, fromMs)} ${clockAt(zone, fromMs)} to ${until(zone, fromMs, toMs)}`,
    slackMs === undefined ? '' : `slack ${clockAt(zone, slackMs)}`,
    `up to ${speed(strongestMps, locale)}`,
    courseText(courseAtStartDeg, courseAtEndDeg),
    inDaylight ? '' : 'in the dark',
  ]
    .filter(Boolean)
    .join(', ')
}

function courseText(start: number | undefined, end: number | undefined): string {
  const [first, last] = [start, end].map((deg) =>
    deg === undefined ? undefined : `${String(Math.round(deg)).padStart(3, '0')}°`,
  )
  if (first && last && first !== last) return `come up to the float on ${first} at first, ${last} at the end`
  const course = first ?? last
  return course ? `come up to the float on ${course}` : ''
}

/** The day is named again only where it has changed. */
function until(zone: string, fromMs: number, toMs: number): string {
  const day = dayAt(zone, toMs)
  return `${day === dayAt(zone, fromMs) ? '' : `${day} `}${clockAt(zone, toMs)}`
}
