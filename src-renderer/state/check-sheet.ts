import type { Check } from '@shared/schema/check'
import type { Water } from '@shared/schema/water'
import { fullCheck } from '@shared/verdicts/full-check'
import { reader } from '@renderer/ui/reader.svelte'
import type { Sheet } from './bench-sheet'
import { figures } from './figures.svelte'
import { packs } from './packs.svelte'
import type { Predicted } from './water-outlook'
import { worn } from './worn.svelte'

/** The six verdicts on what lies on the bench, as the reader reads them. */
export function checkSheet({ pot, trip }: Sheet, water: Water | undefined, predicted: Predicted): Check {
  const wear = worn.of(pot.id)
  return fullCheck({
    pot,
    trip,
    water,
    predicted,
    pack: packs.find(trip.region),
    ...figures.tables,
    fishingFigures: figures.fishing,
    locale: reader.locale,
    today: trip.date,
    ...(wear ? { wear } : {}),
  })
}
