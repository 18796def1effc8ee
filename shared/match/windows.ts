import type { TimeSpan } from '@shared/tides/local-time'
import type { WaterPrediction } from '@shared/tides/predict-water'
import { hourMs, minuteMs } from '@shared/tides/signal'
import { bandsWithin, overlap } from './bands'
import { knownLimits, type PotLimits } from './pot-limits'

/** A time to work a pot, with the course to steer up to its float. */
export interface WorkWindow extends TimeSpan {
  /** The slack in it, where there is one. */
  readonly slackMs: number | undefined
  readonly inDaylight: boolean
  /** Strongest current in the window [m/s]. */
  readonly strongestMps: number
  /**
   * Course from down-current up to the float at the beginning and at the end, degrees true; left out near slack
   * and where the direction of the stream is not known.
   */
  readonly courseAtStartDeg: number | undefined
  readonly courseAtEndDeg: number | undefined
}

export interface PotWindows {
  /** When it holds, when its float shows, and when both; left out where that cannot be told. */
  readonly holds: readonly TimeSpan[] | undefined
  readonly shows: readonly TimeSpan[] | undefined
  readonly both: readonly TimeSpan[]
  /** Recommended; left out where there is no such time in the span. */
  readonly set: WorkWindow | undefined
  readonly haul: WorkWindow | undefined
  /** Whether the pot holds from the middle of the one to the middle of the other. */
  readonly holdsThroughout: boolean | undefined
}

// Three quarters of an hour either side of slack is what a small boat's crew works in.
const halfWindowMs = 45 * minuteMs
// A window shorter than this is no use to anybody with more than one pot.
const shortestMs = 20 * minuteMs
// Below this a boat hardly notices which way the water goes [m/s].
const stillMps = 0.05

/**
 * When a pot holds and its float shows, and the windows to set and to haul it.
 *
 * A window lies around a slack, within a time in which the pot holds and its float shows; in a current that never
 * turns, it is such a time itself. The first window in daylight is taken, or the first at all where none is.
 *
 * @param prediction series of the water
 * @param limits     cautious limits of the pot there
 * @param light      daylight at the place, or an empty list where its position is not known
 * @param soakH      hours to leave the pot down, ≥ 0
 * @param nowMs      moment before which nothing can be done any more [ms since 1970 UTC]; windows that are over by
 *   then are not recommended, unless the whole span is
 * @returns bands in order and the two windows
 */
export function potWindows(
  prediction: WaterPrediction,
  limits: PotLimits,
  light: readonly TimeSpan[],
  soakH: number,
  nowMs = -Infinity,
): PotWindows {
  const holds = limits.holds && bandsWithin(prediction, [limits.holds])
  const shows = limits.shows && bandsWithin(prediction, [limits.shows])
  // What cannot be told is not taken to hold: then there is no time to recommend either.
  const known = limits.missing.length === 0 ? knownLimits(limits) : []
  const both = known.length > 0 ? bandsWithin(prediction, known) : []
  const windows = stillToCome(workWindows(prediction, both, light), prediction, nowMs)
  const set = earliest(windows)
  const haul =
    set &&
    earliest(windows.filter(({ fromMs, toMs }) => middle({ fromMs, toMs }) >= middle(set) + soakH * hourMs))
  const holdsThroughout =
    set && haul && holds?.some((band) => band.fromMs <= middle(set) && band.toMs >= middle(haul))
  return { holds, shows, both, set, haul, holdsThroughout }
}

/** Windows with time left in them; all of them when the span itself lies in the past. */
function stillToCome(
  windows: readonly WorkWindow[],
  { toMs }: TimeSpan,
  nowMs: number,
): readonly WorkWindow[] {
  return nowMs >= toMs ? windows : windows.filter((window) => window.toMs - nowMs >= shortestMs)
}

const middle = ({ fromMs, toMs }: TimeSpan) => (fromMs + toMs) / 2

const earliest = (windows: readonly WorkWindow[]) =>
  windows.find(({ inDaylight }) => inDaylight) ?? windows[0]

function workWindows(
  prediction: WaterPrediction,
  both: readonly TimeSpan[],
  light: readonly TimeSpan[],
): WorkWindow[] {
  const slacks = prediction.streamEvents.filter(({ kind }) => kind === 'slack')
  const spans =
    slacks.length > 0
      ? slacks.flatMap(({ timeMs }) =>
          overlap(both, [{ fromMs: timeMs - halfWindowMs, toMs: timeMs + halfWindowMs }])
            .filter(({ fromMs, toMs }) => fromMs <= timeMs && toMs >= timeMs)
            .map((span) => ({ ...span, slackMs: timeMs })),
        )
      : both.map((span) => ({ ...span, slackMs: undefined }))
  return spans
    .flatMap((span) => lightPart(span, light))
    .filter(({ fromMs, toMs }) => toMs - fromMs >= shortestMs)
    .map((span) => ({
      ...span,
      strongestMps: strongestIn(prediction, span),
      courseAtStartDeg: courseAt(prediction, span.fromMs),
      courseAtEndDeg: courseAt(prediction, span.toMs),
    }))
}

type Candidate = TimeSpan & { readonly slackMs: number | undefined; readonly inDaylight: boolean }

/** The part of a window in daylight where that is long enough, otherwise the whole of it in the dark. */
function lightPart(
  span: TimeSpan & { slackMs: number | undefined },
  light: readonly TimeSpan[],
): Candidate[] {
  const lit = overlap([span], light).filter(({ fromMs, toMs }) => toMs - fromMs >= shortestMs)
  if (lit.length === 0) return [{ ...span, inDaylight: false }]
  return lit.map(({ fromMs, toMs }) => ({ fromMs, toMs, slackMs: span.slackMs, inDaylight: true }))
}

function strongestIn({ currentMps, driftMps, fromMs, stepS }: WaterPrediction, span: TimeSpan): number {
  if (!currentMps) return driftMps
  const first = Math.max(0, Math.floor((span.fromMs - fromMs) / (stepS * 1000)))
  const last = Math.min(currentMps.length - 1, Math.ceil((span.toMs - fromMs) / (stepS * 1000)))
  return driftMps + currentMps.slice(first, last + 1).reduce((most, mps) => Math.max(most, Math.abs(mps)), 0)
}

/**
 * The course on which to come up to a float from down-current: straight against the stream.
 *
 * @param prediction series of a water
 * @param timeMs     moment [ms since 1970 UTC]
 * @returns degrees true, or undefined near slack and where the stream's direction is not known
 */
export function courseAt(prediction: WaterPrediction, timeMs: number): number | undefined {
  const { currentMps, fromMs, stepS, floodDeg, ebbDeg } = prediction
  if (!currentMps) return undefined
  const at = Math.round((timeMs - fromMs) / (stepS * 1000))
  const mps = currentMps[Math.min(currentMps.length - 1, Math.max(0, at))] ?? 0
  const runsTo = mps > 0 ? floodDeg : ebbDeg
  return Math.abs(mps) < stillMps || runsTo === undefined ? undefined : (runsTo + 180) % 360
}
