import type { Pot } from '@shared/schema/pot'
import type { Settings } from '@shared/schema/settings'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'

type Typed = NonNullable<Settings['benchWater']>

/** The water on the strip: one of the saved ones, or what is typed in. */
export interface WaterSetup {
  readonly chosen?: string | undefined
  readonly typed: Typed
}

/** Everything on the Bench that can be changed, and undone. */
export interface Sheet {
  readonly pot: Pot
  readonly trip: Trip
  readonly setup: WaterSetup
}

/** What a newcomer starts from, all of it on the strip to be changed. */
export const firstSetup: WaterSetup = {
  typed: { depthM: 8, currentMps: 0.6, bottom: 'sand', tideRangeM: 2 },
}

export const firstTrip = (today: string): Trip => ({
  format: 'potwright/trip',
  version: 1,
  date: today,
  people: 1,
  licences: 1,
  boat: true,
  pots: 2,
  soakH: 12,
})

/** The typed-in water as a document, or undefined while it has no depth. */
export function typedWater({ typed }: WaterSetup, trip: Trip): Water | undefined {
  if (typed.depthM === undefined) return undefined
  return {
    format: 'potwright/water',
    version: 1,
    id: 'typed-in',
    name: 'Typed in',
    depthM: typed.depthM,
    ...(trip.region === undefined ? {} : { region: trip.region }),
    ...(trip.zone === undefined ? {} : { zone: trip.zone }),
    ...(typed.bottom === undefined ? {} : { bottom: typed.bottom }),
    ...(typed.tideRangeM === undefined ? {} : { tide: { source: 'range', springM: typed.tideRangeM } }),
    ...(typed.currentMps === undefined ? {} : { current: { source: 'fixed', mps: typed.currentMps } }),
  }
}
