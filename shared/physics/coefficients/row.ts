/** How sure a figure is: read in the source, remembered from it, derived, or plain judgement. */
type Standing = 'read' | 'memory' | 'derived' | 'judgement'

/** One adjustable number of the models, with its spread and where it comes from. */
export interface Coefficient {
  /** What it is, in the trade's words. */
  readonly label: string
  readonly unit: string
  readonly low: number
  readonly mid: number
  readonly high: number
  /** Which end of the spread makes the verdict worse. */
  readonly cautious: 'low' | 'high'
  /** Least and greatest value that can be entered. */
  readonly range: readonly [number, number]
  readonly standing: Standing
  readonly source: string
}
