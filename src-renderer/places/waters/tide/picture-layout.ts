import type { WaterPrediction } from '@shared/tides/predict-water'
import { limitAt } from '@shared/match/thresholds'
import { scaleLinear } from 'd3-scale'
import type { TidePicture } from '@renderer/state/tide-picture'
import type { PlotPoint } from '@renderer/ui/chart/plot-model'

/** Where the parts of the picture lie, in pixels. */
export const layout = {
  left: 92,
  right: 18,
  top: 40,
  heightPanel: 124,
  gap: 22,
  currentPanel: 150,
  lane: 18,
  axis: 38,
} as const

const laneCount = 3
const currentTop = layout.top + layout.heightPanel + layout.gap
export const lanesTop = currentTop + layout.currentPanel + 12
export const plotBottom = lanesTop + laneCount * layout.lane
export const pictureHeight = plotBottom + layout.axis
/** Without a pot there are no lanes. */
export const bareHeight = currentTop + layout.currentPanel + layout.axis

export interface Scales {
  readonly x: (atMs: number) => number
  readonly timeAt: (px: number) => number
  readonly height: ReturnType<typeof scaleLinear<number, number>>
  readonly current: ReturnType<typeof scaleLinear<number, number>>
}

/** Scales of one picture; values go in as they are shown to the reader. */
export function scalesOf(prediction: WaterPrediction, width: number, shown: Shown): Scales {
  const x = scaleLinear([prediction.fromMs, prediction.toMs], [layout.left, width - layout.right])
  const heights = [...(prediction.heightM ?? [0, 1])].map((m) => shown(m, 'm'))
  const { currentMps = new Float64Array() } = prediction
  const strongest = currentMps.reduce((most, mps) => Math.max(most, Math.abs(mps)), 0.1)
  const most = shown(strongest * 1.2, 'm/s')
  return {
    x,
    timeAt: (px) => x.invert(px),
    height: scaleLinear(
      [Math.min(0, ...heights), Math.max(...heights)],
      // Room for the words at high and low water.
      [layout.top + layout.heightPanel - 16, layout.top + 18],
    ),
    current: scaleLinear([-most, most], [currentTop + layout.currentPanel, currentTop]),
  }
}

type Shown = (value: number, unit: string) => number

export const currentPanel = { top: currentTop, bottom: currentTop + layout.currentPanel }

/** A series as points, thinned to about one for every pixel that there is. */
export function pointsOf(
  { fromMs, stepS }: WaterPrediction,
  values: Float64Array,
  width: number,
): PlotPoint[] {
  const every = Math.max(1, Math.floor(values.length / Math.max(200, width)))
  const points: PlotPoint[] = []
  for (let i = 0; i < values.length; i += every)
    points.push({ x: fromMs + i * stepS * 1000, y: values[i] ?? 0 })
  return points
}

/** The current at which the pot starts to move, at the depth of each moment; undefined where that is not known. */
export function limitSeries({ prediction, pot }: TidePicture): Float64Array | undefined {
  const holds = pot?.limits.holds
  return holds && prediction.depthM.map((depth) => limitAt(holds, depth) - prediction.driftMps)
}

/** Of labels in order of time, those that do not run into the one before. */
export function apart<Label extends { readonly timeMs: number }>(
  labels: readonly Label[],
  x: (atMs: number) => number,
  leastPx: number,
): Label[] {
  const kept: Label[] = []
  for (const label of labels) {
    const before = kept.at(-1)
    if (!before || x(label.timeMs) - x(before.timeMs) >= leastPx) kept.push(label)
  }
  return kept
}
