import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { windDriftShare } from './conditions'
import { leastTideM } from './height'
import { localDays, type TimeSpan } from './local-time'
import { waterZone } from './place'
import type { Signal } from './signal'
import { streamEvents, type StreamEvent } from './stream'
import { turningPoints } from './turning-points'
import { waterSources, type WaterSources } from './water-sources'

/** High or low water. */
export interface HeightEvent {
  readonly kind: 'high-water' | 'low-water'
  readonly timeMs: number
  /** Above chart datum [m]. */
  readonly heightM: number
}

/** What a water does over a span of time. Series are evenly spaced: the i-th moment is `fromMs + i·stepS·1000`. */
export interface WaterSeries {
  readonly fromMs: number
  readonly toMs: number
  readonly stepS: number
  /** Height above chart datum [m]; left out where the water names no tide. */
  readonly heightM: Float64Array | undefined
  /** Water over the bottom [m], never below zero; the charted depth alone where no tide is named. */
  readonly depthM: Float64Array
  /** Stream along the channel, flood positive, wind left out [m/s]; left out where no current is named. */
  readonly currentMps: Float64Array | undefined
  /** Surface drift that wind may add either way [m/s]. */
  readonly driftMps: number
}

/** Series with everything that is read off them. */
export interface WaterPrediction extends WaterSeries {
  readonly zone: string
  /** Where flood and ebb run to, degrees true. */
  readonly floodDeg: number | undefined
  readonly ebbDeg: number | undefined
  readonly heightEvents: readonly HeightEvent[]
  readonly streamEvents: readonly StreamEvent[]
  /** False where high water was given no hour: then intervals hold, clock times do not. */
  readonly timesKnown: boolean
  /** What could not be told, as the trade says it. */
  readonly missing: readonly string[]
  /** What the reader should know, a sentence each. */
  readonly notes: readonly string[]
}

/**
 * Predicts height, depth and stream at a water over a span of time.
 *
 * @param water     the place
 * @param constants constants of the stations that it names
 * @param span      from and to [ms since 1970 UTC], in whole local days as `waterDays` gives them
 * @param stepS     seconds between samples, > 0
 * @returns series and events; what cannot be told is named in `missing`, never filled in
 */
export function predictWater(
  water: Water,
  constants: WaterConstants,
  span: TimeSpan,
  stepS: number,
): WaterPrediction {
  const { fromMs, toMs } = span
  const sources = waterSources(water, constants, span)
  const { height, stream, timesKnown, missing, notes } = sources
  const series = sampled(water, sources, span, stepS)
  const lowest = series.heightM?.reduce((least, h) => Math.min(least, h), Infinity) ?? 0
  const dries = water.depthM + lowest <= 0
  return {
    ...series,
    zone: waterZone(water, constants),
    ...directionsOf(water, constants),
    heightEvents: height ? heightEvents(height, fromMs, toMs) : [],
    streamEvents: stream && water.current?.source !== 'fixed' ? streamEvents(stream, fromMs, toMs) : [],
    timesKnown,
    missing,
    notes: dries ? [...notes, 'This place dries at low water in the time shown.'] : notes,
  }
}

/** The series of `predictWater` alone, without looking for their turns. */
export const waterSeries = (
  water: Water,
  constants: WaterConstants,
  span: TimeSpan,
  stepS: number,
): WaterSeries => sampled(water, waterSources(water, constants, span), span, stepS)

function sampled(
  water: Water,
  { height, stream }: WaterSources,
  { fromMs, toMs }: TimeSpan,
  stepS: number,
): WaterSeries {
  const count = Math.ceil((toMs - fromMs) / (stepS * 1000))
  const heightM = height?.sample(fromMs, stepS * 1000, count)
  return {
    fromMs,
    toMs,
    stepS,
    heightM,
    depthM: heightM?.map((h) => Math.max(0, water.depthM + h)) ?? new Float64Array(count).fill(water.depthM),
    currentMps: stream?.sample(fromMs, stepS * 1000, count),
    driftMps: windDriftShare * (water.windMps ?? 0),
  }
}

/** Whole local days at a water, by its own clock. */
export const waterDays = (water: Water, constants: WaterConstants, day: string, days: number) =>
  localDays(waterZone(water, constants), day, days)

/**
 * Strongest stream and extreme heights of a prediction, as `conditionsAt` takes them.
 *
 * @param prediction what `predictWater` returned, or its series alone: then of the samples
 * @returns strongest rate either way [m/s] and least and greatest height [m above chart datum], where known
 */
export function extremesOf(prediction: WaterSeries & Partial<WaterPrediction>): {
  currentMps?: number
  lowM?: number
  highM?: number
} {
  const { currentMps, heightM, streamEvents = [], heightEvents = [] } = prediction
  const heights = heightEvents.map((event) => event.heightM)
  const rates = streamEvents.map(({ mps }) => Math.abs(mps))
  return {
    ...(currentMps && {
      currentMps: currentMps.reduce((most, mps) => Math.max(most, Math.abs(mps)), Math.max(0, ...rates)),
    }),
    ...(heightM && {
      lowM: heightM.reduce((least, h) => Math.min(least, h), Math.min(...heights)),
      highM: heightM.reduce((most, h) => Math.max(most, h), Math.max(...heights)),
    }),
  }
}

function heightEvents(height: Signal, fromMs: number, toMs: number): HeightEvent[] {
  return turningPoints(height, fromMs, toMs, leastTideM).map(({ timeMs, value, high }) => ({
    kind: high ? 'high-water' : 'low-water',
    timeMs,
    heightM: value,
  }))
}

function directionsOf({ current }: Water, constants: WaterConstants) {
  if (current?.source === 'station')
    return { floodDeg: constants.current?.floodDeg, ebbDeg: constants.current?.ebbDeg }
  const floodDeg = current?.source === 'rate' ? current.floodDeg : undefined
  return { floodDeg, ebbDeg: floodDeg === undefined ? undefined : (floodDeg + 180) % 360 }
}
