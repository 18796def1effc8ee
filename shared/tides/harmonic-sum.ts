import { astro, constituents as models } from '@neaps/tide-predictor'
import type { Constituent } from '@shared/schema/station'
import { dayMs, hourMs, type Signal } from './signal'

// Node factors bend by under 0.01 % from a straight line in twenty days (18.6-year cycle).
const spanMs = 20 * dayMs

/** One span of time: Σ (A + B·t)·cos(ω·t + φ), t from the span's start, so that spans join without a step. */
interface Span {
  readonly startMs: number
  readonly amplitude: Float64Array
  readonly growthPerMs: Float64Array
  readonly radPerMs: Float64Array
  readonly phase: Float64Array
}

/**
 * Sum of tidal constituents, as a height or as a speed along the channel.
 *
 * h(t) = Z₀ + Σ f·A·cos(V₀ + ω·t + u − g); V₀, f and u from the tide library every twenty days and in a straight
 * line between.
 *
 * @param constituents name, amplitude [m or m/s], phase lag on Greenwich [degrees]
 * @param mean         steady part Z₀ [m or m/s]
 * @returns the sum at any moment from 1900 to 2100
 * @throws {RangeError} a constituent that the library does not know
 * @source harmonic method as in Schureman, Manual of Harmonic Analysis and Prediction of Tides (1958);
 *   arguments and node factors from @neaps/tide-predictor 0.11 (IHO list of constituents)
 */
export function harmonicSum(constituents: readonly Constituent[], mean: number): Signal {
  const used = constituents.filter(([, amplitude]) => amplitude !== 0)
  for (const [name] of used)
    if (models[name] === undefined) throw new RangeError(`harmonicSum: no constituent is called ${name}`)
  const spans = new Map<number, Span>()

  const spanAt = (timeMs: number): Span => {
    const index = Math.floor(timeMs / spanMs)
    const known = spans.get(index)
    if (known) return known
    const made = prepare(used, index * spanMs)
    spans.set(index, made)
    return made
  }

  const at = (timeMs: number): number => {
    const span = spanAt(timeMs)
    const since = timeMs - span.startMs
    let sum = mean
    for (let i = 0; i < used.length; i++)
      sum +=
        ((span.amplitude[i] ?? 0) + (span.growthPerMs[i] ?? 0) * since) *
        Math.cos((span.radPerMs[i] ?? 0) * since + (span.phase[i] ?? 0))
    return sum
  }

  const sample = (startMs: number, stepMs: number, count: number): Float64Array => {
    const out = new Float64Array(count).fill(mean)
    for (let first = 0; first < count;) {
      const span = spanAt(startMs + first * stepMs)
      const end = Math.min(count, Math.max(first + 1, Math.ceil((span.startMs + spanMs - startMs) / stepMs)))
      addSpan(out, span, first, end, startMs, stepMs)
      first = end
    }
    return out
  }

  return { at, sample }
}

function prepare(constituents: readonly Constituent[], startMs: number): Span {
  const rad = Math.PI / 180
  const start = astro(new Date(startMs))
  const end = astro(new Date(startMs + spanMs))
  const amplitude = new Float64Array(constituents.length)
  const growthPerMs = new Float64Array(constituents.length)
  const radPerMs = new Float64Array(constituents.length)
  const phase = new Float64Array(constituents.length)
  constituents.forEach(([name, size, lagDeg], i) => {
    const model = models[name]
    if (!model) return
    const [from, to] = [model.correction(start), model.correction(end)]
    const [fromDeg, toDeg] = [model.value(start) + from.u, model.value(end) + to.u]
    // The turns between are known from the nominal speed; what is left over is drift.
    const nominalDeg = (model.speed * spanMs) / hourMs
    const turnedDeg = nominalDeg + halfTurn(toDeg - fromDeg - nominalDeg)
    amplitude[i] = size * from.f
    growthPerMs[i] = (size * (to.f - from.f)) / spanMs
    radPerMs[i] = (rad * turnedDeg) / spanMs
    phase[i] = rad * (fromDeg - lagDeg)
  })
  return { startMs, amplitude, growthPerMs, radPerMs, phase }
}

/** The same angle within half a turn of zero [degrees]. */
const halfTurn = (deg: number) => deg - 360 * Math.round(deg / 360)

/** Adds a span's constituents to evenly spaced samples, turning each by a fixed angle a step instead of calling cos. */
function addSpan(out: Float64Array, span: Span, first: number, end: number, startMs: number, stepMs: number) {
  const since = startMs + first * stepMs - span.startMs
  for (let i = 0; i < span.amplitude.length; i++) {
    const speed = span.radPerMs[i] ?? 0
    const growth = span.growthPerMs[i] ?? 0
    const angle = speed * since + (span.phase[i] ?? 0)
    const turnCos = Math.cos(speed * stepMs)
    const turnSin = Math.sin(speed * stepMs)
    const step = growth * stepMs
    let size = (span.amplitude[i] ?? 0) + growth * since
    let x = Math.cos(angle)
    let y = Math.sin(angle)
    for (let k = first; k < end; k++) {
      out[k] = (out[k] ?? 0) + size * x
      size += step
      const next = x * turnCos - y * turnSin
      y = x * turnSin + y * turnCos
      x = next
    }
  }
}
