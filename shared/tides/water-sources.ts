import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { harmonicSum } from './harmonic-sum'
import { heightSignal, leastTideM } from './height'
import type { TimeSpan } from './local-time'
import { stationRanges } from './mean-ranges'
import { modelTide } from './model-tide'
import { dayMs, signalOf, type Signal } from './signal'
import { sineStream } from './sine-stream'
import { streamSignal } from './stream'
import { turningPoints } from './turning-points'

/** Height and stream of a water as functions of time, before anything is sampled. */
export interface WaterSources {
  /** Height above chart datum [m]. */
  readonly height: Signal | undefined
  /** Stream along the channel, flood positive [m/s]. */
  readonly stream: Signal | undefined
  /** False where high water was given no hour. */
  readonly timesKnown: boolean
  readonly missing: readonly string[]
  readonly notes: readonly string[]
}

// The last two full 19-year tidal datum epochs begin here; constants from before are worth a word.
const oldRecordsBefore = 1983

/**
 * Where a water's height and stream come from, and what cannot be told about them.
 *
 * @param water     the place
 * @param constants constants of the stations that it names
 * @param span      time that will be asked for [ms since 1970 UTC]
 */
export function waterSources(water: Water, constants: WaterConstants, span: TimeSpan): WaterSources {
  const missing: string[] = []
  const height = heightOf(water, constants, span)
  if (!height) missing.push(missingHeight(water))
  const stream = streamOf(water, constants, height, span)
  if (!stream) missing.push(missingStream(water))
  return {
    height,
    stream,
    timesKnown: !isClockless(water, constants),
    missing,
    notes: notesOn(water, constants),
  }
}

function heightOf(
  { tide }: Water,
  constants: WaterConstants,
  { fromMs, toMs }: TimeSpan,
): Signal | undefined {
  if (isNeapAbove(tide)) return undefined
  if (tide?.source === 'range') return harmonicSum(modelTide(tide.springM, tide.neapM), tide.springM / 2)
  return tide && constants.tide && heightSignal(constants.tide, fromMs, toMs)
}

function streamOf(
  water: Water,
  constants: WaterConstants,
  height: Signal | undefined,
  { fromMs, toMs }: TimeSpan,
): Signal | undefined {
  const { current } = water
  if (current?.source === 'fixed') return signalOf(() => current.mps)
  if (current?.source === 'station') return constants.current && streamSignal(constants.current, fromMs, toMs)
  if (!current || isNeapAbove(current)) return undefined
  const ranges = rangesOf(water, constants, current)
  const tide = height ?? harmonicSum(modelTide(ranges.springM, ranges.neapM), 0)
  const turns = turningPoints(tide, fromMs - 2 * dayMs, toMs + 2 * dayMs, leastTideM)
  if (turns.length < 2 || !(ranges.springM > 0)) return undefined
  const { springM, neapM } = ranges
  const neap =
    current.neapMps !== undefined && neapM !== undefined && neapM < springM
      ? { rangeM: neapM, rate: current.neapMps }
      : { rangeM: 0, rate: 0 }
  return sineStream(turns, { rangeM: springM, rate: current.springMps }, neap, current.lagH ?? 0)
}

type Rate = Extract<NonNullable<Water['current']>, { source: 'rate' }>

/** Spring and neap ranges by which a typed rate is scaled. */
function rangesOf({ tide }: Water, constants: WaterConstants, rate: Rate) {
  if (tide?.source === 'range') return { springM: tide.springM, neapM: tide.neapM }
  if (constants.tide) return stationRanges(constants.tide)
  // No tide at all: a tide of one metre whose ranges stand to each other as the rates do.
  const { springMps, neapMps } = rate
  const known = springMps > 0 && neapMps !== undefined && neapMps <= springMps
  return { springM: 1, neapM: known ? neapMps / springMps : undefined }
}

/** More at neaps than at springs is a slip of the pen, and nothing follows from it. */
const isNeapAbove = (source: Water['tide'] | Water['current']): boolean =>
  (source?.source === 'range' && (source.neapM ?? 0) > source.springM) ||
  (source?.source === 'rate' && (source.neapMps ?? 0) > source.springMps)

function missingHeight({ tide }: Water): string {
  if (isNeapAbove(tide)) return 'a neap range no larger than the spring range'
  return tide?.source === 'station' ? `the constants of tide station ${tide.id}` : 'the tide at this water'
}

function missingStream({ current }: Water): string {
  if (!current) return 'the current at this water'
  if (isNeapAbove(current)) return 'a neap rate no larger than the spring rate'
  if (current.source === 'station') return `the constants of current station ${current.id}`
  return 'a tide above zero for the rate to follow'
}

/** No station says at what hour the stream turns, or high water comes where there is no stream. */
function isClockless({ tide, current }: Water, constants: WaterConstants): boolean {
  if (current?.source === 'station') return false
  return tide?.source === 'range' || (current?.source === 'rate' && !constants.tide)
}

function notesOn(water: Water, constants: WaterConstants): string[] {
  const { tide, current } = water
  const notes: string[] = []
  if (isClockless(water, constants))
    notes.push('No station gives the hour of high water here, so intervals hold but clock times do not.')
  if (tide?.source === 'range' && tide.neapM === undefined)
    notes.push('No neap range is given, so every tide is taken as a spring tide.')
  if (current?.source === 'rate' && current.neapMps === undefined)
    notes.push('No neap rate is given, so the rate follows the range of the tide in proportion.')
  if (current?.source === 'rate' && current.lagH === undefined)
    notes.push('No lag is given, so slack is taken at high and low water.')
  if (
    (current?.source === 'fixed' && current.mps === 0) ||
    (current?.source === 'rate' && current.springMps === 0)
  )
    notes.push('The current typed in is zero: nothing moves here but what the wind drifts.')
  const end = constants.tide?.recordsEnd
  if (end !== undefined && end < oldRecordsBefore)
    notes.push(`The tide station's records end in ${end}; the channel may have changed since.`)
  return notes
}
