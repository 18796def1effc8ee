import { limitAt, type Threshold } from './thresholds'

/**
 * A series of depths and speeds sorted for counting: moments fall into narrow bands of depth, and within a band
 * they are in order of speed. One index serves every design.
 */
export interface TideIndex {
  /** Edges of the bands, rising [m]; one more than there are bands. */
  readonly edgeM: Float64Array
  /** Where each band begins in `speedMps`; one more than there are bands. */
  readonly start: Uint32Array
  readonly speedMps: Float64Array
  readonly depthM: Float64Array
}

const bandsPerRung = 24

/**
 * Sorts a series for counting.
 *
 * @param depthM   depth at each moment [m]
 * @param speedMps strength of the current at the same moments [m/s], ≥ 0
 * @param ladder   depths of the thresholds that will be asked about, covering the series
 * @throws {RangeError} series of different length
 */
export function indexTide(depthM: Float64Array, speedMps: Float64Array, ladder: Float64Array): TideIndex {
  const count = depthM.length
  if (speedMps.length !== count)
    throw new RangeError(`indexTide: ${count} depths but ${speedMps.length} speeds`)
  const edgeM = edgesOf(ladder)
  const bands = edgeM.length - 1
  const bandOf = new Uint16Array(count)
  const start = new Uint32Array(bands + 1)
  for (let i = 0; i < count; i++) {
    const band = bandAt(edgeM, ladder, depthM[i] ?? 0)
    bandOf[i] = band
    start[band + 1] = (start[band + 1] ?? 0) + 1
  }
  for (let band = 0; band < bands; band++) start[band + 1] = (start[band + 1] ?? 0) + (start[band] ?? 0)

  const order = bySpeed(speedMps)
  const next = start.slice()
  const sortedSpeed = new Float64Array(count)
  const sortedDepth = new Float64Array(count)
  for (const i of order) {
    const band = bandOf[i] ?? 0
    const at = next[band] ?? 0
    next[band] = at + 1
    sortedSpeed[at] = speedMps[i] ?? 0
    sortedDepth[at] = depthM[i] ?? 0
  }
  return { edgeM, start, speedMps: sortedSpeed, depthM: sortedDepth }
}

/**
 * Share of the time in which the current stays within every one of the thresholds: exactly the count that
 * asking moment by moment would give.
 *
 * In a band the limits are straight lines, so a speed below their least end holds and one above their greatest
 * end does not; only the few in between are asked one by one.
 *
 * @param index      sorted series
 * @param thresholds limits on the ladder that the index was made with
 * @returns share, 0 … 1; 1 for an empty list of thresholds
 */
export function shareWithin(index: TideIndex, thresholds: readonly Threshold[]): number {
  const { edgeM, start, speedMps, depthM } = index
  let held = 0
  for (let band = 0; band + 1 < edgeM.length; band++) {
    const from = start[band] ?? 0
    const to = start[band + 1] ?? 0
    if (from === to) continue
    let surely = Infinity
    let perhaps = Infinity
    for (const threshold of thresholds) {
      const low = limitAt(threshold, edgeM[band] ?? 0)
      const high = limitAt(threshold, edgeM[band + 1] ?? 0)
      surely = Math.min(surely, low, high)
      perhaps = Math.min(perhaps, Math.max(low, high))
    }
    const certain = firstAbove(speedMps, from, to, surely - rounding)
    const possible = firstAbove(speedMps, certain, to, perhaps + rounding)
    held += certain - from
    for (let i = certain; i < possible; i++)
      if (isWithin(thresholds, depthM[i] ?? 0, speedMps[i] ?? 0)) held++
  }
  return speedMps.length === 0 ? 0 : held / speedMps.length
}

// Samples are in order to a tenth of a micrometre a second only.
const rounding = 1e-6

/** Whether one moment stays within every threshold. */
export function isWithin(thresholds: readonly Threshold[], depthM: number, speedMps: number): boolean {
  return thresholds.every((threshold) => speedMps <= limitAt(threshold, depthM))
}

function edgesOf(ladder: Float64Array): Float64Array {
  const rungs = ladder.length - 1
  return Float64Array.from({ length: rungs * bandsPerRung + 1 }, (_, i) => {
    const rung = Math.min(Math.floor(i / bandsPerRung), rungs - 1)
    const low = ladder[rung] ?? 0
    return low + (((ladder[rung + 1] ?? low) - low) * (i - rung * bandsPerRung)) / bandsPerRung
  })
}

/** Band of a depth; depths beyond the ladder go to the first or last band, where the limit stays as it is. */
function bandAt(edgeM: Float64Array, ladder: Float64Array, depth: number): number {
  let rung = 0
  while (rung < ladder.length - 2 && depth > (ladder[rung + 1] ?? 0)) rung++
  const low = ladder[rung] ?? 0
  const high = ladder[rung + 1] ?? low
  const part = Math.floor(((depth - low) / (high - low)) * bandsPerRung)
  const guess = rung * bandsPerRung + Math.min(bandsPerRung - 1, Math.max(0, part))
  // Dividing may land a hair on the wrong side of an edge.
  if (depth < (edgeM[guess] ?? 0) && guess > 0) return guess - 1
  if (depth > (edgeM[guess + 1] ?? Infinity) && guess < edgeM.length - 2) return guess + 1
  return guess
}

/**
 * Numbers of the samples in order of speed, to a tenth of a micrometre a second. Speed and number are put into one
 * plain number each, since sorting numbers is many times faster than sorting with a comparison.
 */
function bySpeed(speedMps: Float64Array): Float64Array {
  if (speedMps.length > mostSamples) throw new RangeError(`indexTide: more than ${mostSamples} moments`)
  return speedMps
    .map((speed, i) => Math.round(speed / finest) * mostSamples + i)
    .sort()
    .map((key) => key % mostSamples)
}

const finest = 1e-7
const mostSamples = 2 ** 20

/** First place in `from … to` whose value is above the limit. */
function firstAbove(sorted: Float64Array, from: number, to: number, limit: number): number {
  let low = from
  let high = to
  while (low < high) {
    const middle = (low + high) >> 1
    if ((sorted[middle] ?? 0) <= limit) low = middle + 1
    else high = middle
  }
  return low
}
