import type { Outlook } from '@shared/physics/coefficients'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import type { Tables } from '@renderer/state/figures.svelte'
import type { Predicted } from '@renderer/state/water-outlook'
import type { ReaderLocale } from '@shared/units/locale'
import type { SingleChange } from '@shared/verdicts/best-change'
import type { BandPoint, Explanation } from '@shared/verdicts/explain'

/** What the worker is asked, and what it answers; both cross to it as plain data. */
export interface WhyQuestion {
  readonly pot: Pot
  readonly trip: Trip
  readonly water: Water | undefined
  /** What a saved water does at its strongest on the days of the trip. */
  readonly predicted: Predicted
  readonly outlook: Outlook
  readonly locale: ReaderLocale
  readonly tables: Tables
}

export interface WhyAnswer {
  readonly explanation: Explanation | undefined
  readonly changes: readonly SingleChange[]
  readonly factors: readonly BandPoint[]
  readonly rings: readonly BandPoint[]
}
