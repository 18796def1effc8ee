import type { CrabMeasure } from './species'

/** The least size that may be kept, as the rules of the place take it. Given by the rules, never by this folder. */
export interface LegalSize {
  readonly species: string
  /** What the rules of the place call the crab. */
  readonly name?: string
  readonly measure: CrabMeasure
  readonly sizeMm: number
}
