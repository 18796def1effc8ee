import { brentRoot } from '@shared/numerics/brent-root'
import { minuteMs, type Signal } from './signal'

// Tides and streams have no two extremes within ten minutes that anybody would print.
const stepMs = 10 * minuteMs
const toleranceMs = 500

export interface TurningPoint {
  readonly timeMs: number
  readonly value: number
  readonly high: boolean
}

export interface Crossing {
  readonly timeMs: number
  readonly rising: boolean
}

/**
 * Highs and lows of a signal, each bracketed by samples ten minutes apart and refined to half a second.
 *
 * Pairs that rise and fall by less than `leastRise` are left out together, so that highs and lows keep
 * alternating: a tide table does not print a ripple at the stand of the tide.
 *
 * @param signal    height or speed, smooth
 * @param fromMs    start [ms since 1970 UTC]
 * @param toMs      end [ms]
 * @param leastRise smallest difference worth a turn [unit of the signal], ≥ 0
 * @returns turning points in order of time
 */
export function turningPoints(
  signal: Signal,
  fromMs: number,
  toMs: number,
  leastRise: number,
): TurningPoint[] {
  const count = Math.ceil((toMs - fromMs) / stepMs) + 3
  const values = signal.sample(fromMs - stepMs, stepMs, count)
  const found: TurningPoint[] = []
  for (let i = 1; i < count - 1; i++) {
    const before = (values[i] ?? 0) - (values[i - 1] ?? 0)
    const after = (values[i + 1] ?? 0) - (values[i] ?? 0)
    if (before === 0 || before * after > 0) continue
    const high = before > 0
    const middle = fromMs + (i - 1) * stepMs
    const timeMs = rootIn((t) => slope(signal, t), middle - stepMs, middle + stepMs)
    if (timeMs >= fromMs && timeMs < toMs) found.push({ timeMs, value: signal.at(timeMs), high })
  }
  return withoutRipples(found, leastRise)
}

/**
 * Moments at which a signal passes zero, refined to half a second.
 *
 * @param signal smooth signal
 * @param fromMs start [ms since 1970 UTC]
 * @param toMs   end [ms]
 * @returns crossings in order of time, with their direction
 */
export function zeroCrossings(signal: Signal, fromMs: number, toMs: number): Crossing[] {
  const count = Math.ceil((toMs - fromMs) / stepMs) + 1
  const values = signal.sample(fromMs, stepMs, count)
  const found: Crossing[] = []
  for (let i = 1; i < count; i++) {
    const before = values[i - 1] ?? 0
    const after = values[i] ?? 0
    if (before < 0 === after < 0 || before === after) continue
    const start = fromMs + (i - 1) * stepMs
    const rising = after > before
    const timeMs = rootIn(signal.at, start, start + stepMs)
    if (timeMs < toMs) found.push({ timeMs, rising })
  }
  return found
}

// A central difference over two minutes places a tidal extreme within a tenth of a second.
const slope = (signal: Signal, timeMs: number) => signal.at(timeMs + minuteMs) - signal.at(timeMs - minuteMs)

/** Moment in a bracket at which `f` changes sign. */
const rootIn = (f: (timeMs: number) => number, fromMs: number, toMs: number): number =>
  brentRoot(f, fromMs, toMs, { tolerance: toleranceMs }).root

/** Takes out neighbouring pairs, smallest first, while any is smaller than `leastRise`. */
function withoutRipples(points: TurningPoint[], leastRise: number): TurningPoint[] {
  const kept = [...points]
  for (;;) {
    let smallest = leastRise
    let at = -1
    for (let i = 1; i < kept.length; i++) {
      const rise = Math.abs((kept[i]?.value ?? 0) - (kept[i - 1]?.value ?? 0))
      if (rise < smallest) {
        smallest = rise
        at = i
      }
    }
    if (at < 0) return kept
    // At an end one of the pair has no other neighbour: the inner one must go with the ripple, the outer too.
    kept.splice(at - 1, 2)
  }
}
