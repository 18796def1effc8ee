import type { Coefficients } from '@shared/physics/coefficients'
import type { Verdict } from '@shared/schema/check'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import type { Conditions, MissingConditions } from '@shared/tides/conditions'
import type { ReaderLocale } from '@shared/units/locale'
import type { Landing } from './landing'

/** Everything a full check needs. What is left out makes the verdicts that need it "cannot tell". */
export interface CheckInput {
  readonly pot: Pot
  readonly materials: Materials
  readonly coefficients: Coefficients
  readonly conditions?: Conditions | MissingConditions
  readonly trip?: Trip
  /** From the rules of the region, judged elsewhere. */
  readonly legal?: Verdict
  /** From the fishing models, judged elsewhere; they ask how the pot lands, where that can be told. */
  readonly fishing?: (landing: Landing | undefined) => Verdict
  readonly wear?: WearState
  /** How the sentences write quantities; figures stay SI. Metric with a full stop unless said. */
  readonly locale?: ReaderLocale
}

/** What use has done to the gear, as far as the check is concerned. */
export interface WearState {
  /** Share of the new rope's strength that is left, 0-1. */
  readonly ropeStrengthLeft?: number
  /** Growth on the netting: its drag times this, 1 clean to 4. */
  readonly foulingFactor?: number
}
