/**
 * Up to what surface current something holds, at a few depths of water. Between the depths the limit runs in a
 * straight line; beyond the first and the last it stays as it is there.
 */
export interface Threshold {
  /** Rising [m]. */
  readonly depthM: Float64Array
  /** Limit at each depth [m/s]; zero where it never holds. */
  readonly limitMps: Float64Array
}

// Depths a fifth apart: between them limits are straight within a few tenths of a percent.
const ratio = 1.2

/**
 * Depths at which limits are worked out so that every depth from `low` to `high` lies between two of them. They
 * come from one ladder, so that waters of like depth share the work.
 *
 * @param low  least depth [m], ≥ 0
 * @param high greatest depth [m], ≥ low
 * @returns rising depths [m]
 */
export function depthLadder(low: number, high: number): Float64Array {
  const rung = (i: number) => ratio ** i
  const first = Math.floor(Math.log(Math.max(low, 0.5)) / Math.log(ratio) + 1e-9)
  const last = Math.max(first + 1, Math.ceil(Math.log(Math.max(high, 0.5)) / Math.log(ratio) - 1e-9))
  return Float64Array.from({ length: last - first + 1 }, (_, i) => rung(first + i))
}

/** A threshold from a limit worked out at each depth. */
export function thresholdOf(depthM: Float64Array, limitAt: (depthM: number) => number): Threshold {
  return { depthM, limitMps: depthM.map((depth) => limitAt(depth)) }
}

/**
 * Limit at a depth.
 *
 * @param threshold limits at rising depths
 * @param depthM    depth asked for [m]
 * @returns limit [m/s]
 */
export function limitAt({ depthM, limitMps }: Threshold, depth: number): number {
  const last = depthM.length - 1
  if (depth <= (depthM[0] ?? 0)) return limitMps[0] ?? 0
  for (let i = 1; i <= last; i++) {
    const high = depthM[i] ?? 0
    if (depth > high) continue
    const low = depthM[i - 1] ?? 0
    const from = limitMps[i - 1] ?? 0
    return from + (((limitMps[i] ?? 0) - from) * (depth - low)) / (high - low)
  }
  return limitMps[last] ?? 0
}
