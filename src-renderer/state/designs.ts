import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'
import { bench } from './bench.svelte'
import { shelf } from './shelf'

/** Every design there is to choose from: the one on the Bench as it lies there, the shelf, the starting shapes. */
export function designs(): { bench: Pot; saved: readonly Pot[]; starters: readonly Pot[] } {
  return {
    bench: bench.pot,
    saved: shelf.sorted.map(({ document }) => document).filter(({ id }) => id !== bench.pot.id),
    starters: starterPots,
  }
}

export function designBy(id: string | undefined): Pot | undefined {
  const { bench: open, saved, starters } = designs()
  return [open, ...saved, ...starters].find((pot) => pot.id === id)
}
