import { builtInMaterials } from '@shared/design/materials/built-in'
import { defaultCoefficients } from '@shared/physics/coefficients'
import type { Check } from '@shared/schema/check'
import type { Water } from '@shared/schema/water'
import { fullCheck } from '@shared/verdicts/full-check'
import { reader } from '@renderer/ui/reader.svelte'
import type { Sheet } from './bench-sheet'
import { packs } from './packs.svelte'

/** The six verdicts on what lies on the bench, in the reader's units. */
export function checkSheet({ pot, trip }: Sheet, water: Water | undefined): Check {
  return fullCheck({
    pot,
    trip,
    water,
    pack: packs.find(trip.region),
    materials: builtInMaterials,
    coefficients: defaultCoefficients,
    units: reader.units,
    today: trip.date,
  })
}
