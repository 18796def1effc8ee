import type { Coefficients } from '@shared/physics/coefficients'
import type { Materials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { type LegalCrab, smallestLegalCrab } from './legal-crab'
import { ropeNeed, type RopeNeed } from './rope-share'

/** What the designs and the places fished say of the parts that hang on a pot. */
export interface Surroundings {
  /** By id of the design. */
  readonly designs: Readonly<
    Record<string, { readonly rope?: RopeNeed | undefined; readonly barMm?: number | undefined }>
  >
  /** By id of the water. */
  readonly waters: Readonly<Record<string, WaterFacts>>
  /** The smallest legal crab where the water of a pot is not known. */
  readonly crab?: LegalCrab | undefined
}

interface WaterFacts {
  readonly temperatureC?: number | undefined
  readonly latitudeDeg?: number | undefined
  readonly crab?: LegalCrab | undefined
}

/** Where they are taken from. */
export interface SurroundingSources {
  readonly designs: readonly Pot[]
  readonly waters: readonly Water[]
  /** The trip last set up: the crabs sought, and the region of pots that were set nowhere yet. */
  readonly trip?: Trip | undefined
  readonly rules: (region: string) => RulePack | undefined
  readonly materials: Materials
  readonly coefficients: Coefficients
}

/** What the wear of parts depends on beside their history, from the designs, the waters and the rules. */
export function surroundingsOf(sources: SurroundingSources): Surroundings {
  const { designs, waters, trip, materials, coefficients } = sources
  return {
    designs: Object.fromEntries(
      designs.map((pot) => [
        pot.id,
        { rope: ropeNeed(pot, materials, coefficients), barMm: pot.netting?.barLengthMm },
      ]),
    ),
    waters: Object.fromEntries(
      waters.map(({ id, temperatureC, latitudeDeg, region, zone }) => [
        id,
        { temperatureC, latitudeDeg, crab: crabAt(sources, region, zone) },
      ]),
    ),
    crab: crabAt(sources, trip?.region, trip?.zone),
  }
}

function crabAt(
  { trip, rules }: SurroundingSources,
  region: string | undefined,
  zone: string | undefined,
): LegalCrab | undefined {
  const pack = region === undefined ? undefined : rules(region)
  if (!pack) return undefined
  const species = trip?.region === region ? trip?.species : undefined
  return smallestLegalCrab(pack, {
    ...{ format: 'potwright/trip', version: 1 },
    ...(zone === undefined ? {} : { zone }),
    ...(species === undefined || species.length === 0 ? {} : { species }),
  })
}
