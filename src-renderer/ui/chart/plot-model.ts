import type { VerdictState } from '@shared/schema/check'

/* What a chart is given. Both axes are plain numbers in stored units; time is milliseconds since 1970. */

export interface PlotPoint {
  readonly x: number
  readonly y: number
}

export interface PlotSeries {
  readonly label: string
  readonly points: readonly PlotPoint[]
  /** The spread about the line. */
  readonly band?: readonly { readonly x: number; readonly low: number; readonly high: number }[]
}

/** A level that matters, drawn across with its name. */
export interface PlotThreshold {
  readonly y: number
  readonly label: string
  readonly state?: VerdictState
}

/** A place on the horizontal axis that matters, as now or the design as it stands. */
export interface PlotMarker {
  readonly x: number
  readonly label: string
}

export interface PlotTick {
  readonly x: number
  readonly label: string
  readonly strong?: boolean
}

export interface PlotAxis {
  readonly from: number
  readonly to: number
  readonly label: string
  readonly ticks: readonly PlotTick[]
  /** A value of the axis in words, for the reading and the table. */
  readonly say: (x: number) => string
}
