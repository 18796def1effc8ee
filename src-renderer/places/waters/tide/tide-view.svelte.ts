import type { Pot } from '@shared/schema/pot'
import { bench } from '@renderer/state/bench.svelte'
import { designBy } from '@renderer/state/designs'

/** Which days and which pot the tide picture shows; kept while other places are open. */
class TideView {
  /** First day; undefined means today, by the water's own clock. */
  day = $state<string>()
  days = $state(2)
  #potId = $state<string | 'none'>()
  #soakH = $state<number>()

  /** The pot looked at: the one on the Bench until another is chosen, or none. */
  pot = $derived.by((): Pot | undefined =>
    this.#potId === 'none' ? undefined : (designBy(this.#potId) ?? bench.pot),
  )
  soakH = $derived.by(() => this.#soakH ?? bench.trip.soakH ?? 12)

  choosePot(id: string | undefined): void {
    this.#potId = id ?? 'none'
  }

  changeSoak(hours: number | undefined): void {
    this.#soakH = hours
  }
}

export const tideView = new TideView()
