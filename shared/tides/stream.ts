import type { CurrentConstants } from '@shared/schema/station'
import { harmonicSum } from './harmonic-sum'
import { inOrder, retimed, type Anchor } from './retimed'
import { dayMs, minuteMs, type Signal } from './signal'
import { turningPoints, zeroCrossings } from './turning-points'

/** Wiggles of a stream below this are not printed as turns of their own [m/s]. */
const leastTurnMps = 0.01

type StreamEventKind = 'slack' | 'max-flood' | 'max-ebb' | 'least-flood' | 'least-ebb'

export interface StreamEvent {
  readonly kind: StreamEventKind
  readonly timeMs: number
  /** Signed, flood positive [m/s]; zero at slack. */
  readonly mps: number
  /** At slack: what begins. */
  readonly next?: 'flood' | 'ebb'
}

/**
 * Speed of the stream along the channel at a current station, flood positive.
 *
 * Reference station: mean flow plus the harmonic sum of the major axis. Subordinate station: slack before
 * flood, greatest flood, slack before ebb and greatest ebb of the reference each moved by their own minutes,
 * and the speed multiplied by the flood or the ebb ratio.
 *
 * @param current constants of the station, those of its reference included
 * @param fromMs  start of the time that will be asked for [ms since 1970 UTC]
 * @param toMs    end of it [ms]
 * @returns speed [m/s]
 * @source U.S. tidal current tables, table 2 (time differences for the four phases, speed ratios), as carried
 *   by @neaps/tide-database; evenly stretched time between the phases is our own reading of them
 */
export function streamSignal(current: CurrentConstants, fromMs: number, toMs: number): Signal {
  const reference = harmonicSum(current.constituents, current.meanFlowMps)
  const offsets = current.offsets
  if (!offsets) return reference
  const minutes: Record<string, number> = {
    flood: offsets.slackBeforeFloodMinutes,
    ebb: offsets.slackBeforeEbbMinutes,
    'max-flood': offsets.floodMinutes,
    'max-ebb': offsets.ebbMinutes,
  }
  const anchors: Anchor[] = mainPhases(streamEvents(reference, fromMs - 2 * dayMs, toMs + 2 * dayMs)).map(
    (event) => ({
      referenceMs: event.timeMs,
      hereMs: event.timeMs + (minutes[event.next ?? event.kind] ?? 0) * minuteMs,
      weight: Math.abs(event.mps),
    }),
  )
  return retimed(reference, inOrder(anchors), (mps) =>
    mps > 0 ? mps * offsets.floodRatio : mps * offsets.ebbRatio,
  )
}

/** Slacks, and of each run between two slacks the one moment when it is strongest. */
function mainPhases(events: readonly StreamEvent[]): StreamEvent[] {
  const phases: StreamEvent[] = []
  for (const event of events) {
    if (event.kind === 'least-flood' || event.kind === 'least-ebb') continue
    const last = phases.at(-1)
    if (event.kind !== 'slack' && last?.kind === event.kind) {
      if (Math.abs(event.mps) > Math.abs(last.mps)) phases[phases.length - 1] = event
    } else phases.push(event)
  }
  return phases
}

/**
 * Slacks and turns of a stream: zero crossings and extremes, refined to half a second.
 *
 * A stream that weakens without turning gives a *least flood* or *least ebb* instead of a slack.
 *
 * @param signal signed speed, flood positive [m/s]
 * @param fromMs start [ms since 1970 UTC]
 * @param toMs   end [ms]
 * @returns events in order of time
 */
export function streamEvents(signal: Signal, fromMs: number, toMs: number): StreamEvent[] {
  const slacks = zeroCrossings(signal, fromMs, toMs).map(({ timeMs, rising }): StreamEvent => ({
    kind: 'slack',
    timeMs,
    mps: 0,
    next: rising ? 'flood' : 'ebb',
  }))
  const turns = turningPoints(signal, fromMs, toMs, leastTurnMps).map(
    ({ timeMs, value, high }): StreamEvent => ({
      kind: value > 0 ? (high ? 'max-flood' : 'least-flood') : high ? 'least-ebb' : 'max-ebb',
      timeMs,
      mps: value,
    }),
  )
  return [...slacks, ...turns].sort((a, b) => a.timeMs - b.timeMs)
}
