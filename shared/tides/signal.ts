/** A quantity that varies with time and can be asked for at any moment. */
export interface Signal {
  /** Value at a moment given in milliseconds since 1970 UTC. */
  at(timeMs: number): number
  /** Values at `count` moments, `stepMs` apart, the first at `startMs`. */
  sample(startMs: number, stepMs: number, count: number): Float64Array
}

/** A signal from a plain function, sampled point by point. */
export function signalOf(at: (timeMs: number) => number): Signal {
  return {
    at,
    sample: (startMs, stepMs, count) =>
      Float64Array.from({ length: count }, (_, i) => at(startMs + i * stepMs)),
  }
}

export const minuteMs = 60_000
export const hourMs = 3_600_000
export const dayMs = 86_400_000
