import type { Pot } from '@shared/schema/pot'
import type { Settings } from '@shared/schema/settings'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'

/** An invented crew with everything it has: what the demo shows. Its places and people are invented. */
export interface Crew {
  readonly units: NonNullable<Settings['units']>
  readonly designs: readonly Pot[]
  readonly waters: readonly Water[]
  readonly trip: Trip
  /** What lies on the Bench first. */
  readonly onBench: { readonly pot: string; readonly water: string }
  /** Owned pots: numbers, the design each is one of, and the water it fishes. */
  readonly owned: readonly { readonly number: string; readonly design: string; readonly water: string }[]
  readonly prices: readonly {
    readonly item: string
    readonly each: number
    readonly per: 'piece' | 'metre' | 'coil' | 'panel'
  }[]
}
