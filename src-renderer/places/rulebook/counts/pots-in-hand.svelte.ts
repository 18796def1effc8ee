import type { Pot } from '@shared/schema/pot'
import { bench } from '@renderer/state/bench.svelte'
import { shelf } from '@renderer/state/shelf'

const MOST_OF_ONE = 200

/** How many of each design the crew takes along. Of the one on the bench, as many as its trip says to begin with. */
class PotsInHand {
  #counts = $state<Record<string, number>>({})

  /** The designs there are, the one on the bench first and as it stands there. */
  designs = $derived.by((): readonly Pot[] => [
    bench.pot,
    ...shelf.sorted.map((kept) => kept.document).filter((pot) => pot.id !== bench.pot.id),
  ])
  /** One entry a piece. */
  pots = $derived.by(() => this.designs.flatMap((pot) => Array.from({ length: this.count(pot) }, () => pot)))

  count(pot: Pot): number {
    return this.#counts[pot.id] ?? (pot.id === bench.pot.id ? (bench.trip.pots ?? 1) : 0)
  }

  set(pot: Pot, count: number | undefined): void {
    this.#counts[pot.id] = Math.min(MOST_OF_ONE, count ?? 0)
  }
}

export const potsInHand = new PotsInHand()
