import type { WaterPrediction } from '@shared/tides/predict-water'

/** A line of a tide table. */
export interface TideEvent {
  readonly kind: 'high-water' | 'low-water' | 'slack' | 'max-flood' | 'max-ebb'
  readonly timeMs: number
  readonly heightM: number | undefined
  readonly mps: number | undefined
}

/** High and low water, slacks and strongest runs in the order of time; a lull within a run is not printed. */
export function tableEvents({ heightEvents, streamEvents }: WaterPrediction): TideEvent[] {
  const heights = heightEvents.map(({ kind, timeMs, heightM }): TideEvent => ({
    kind,
    timeMs,
    heightM,
    mps: undefined,
  }))
  const streams = streamEvents.flatMap(({ kind, timeMs, mps }): TideEvent[] =>
    kind === 'least-flood' || kind === 'least-ebb' ? [] : [{ kind, timeMs, heightM: undefined, mps }],
  )
  return [...heights, ...streams].sort((a, b) => a.timeMs - b.timeMs)
}
