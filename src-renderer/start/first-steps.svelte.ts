import { settings } from '@renderer/state/settings.svelte'
import { shelf, waters } from '@renderer/state/shelf'

/** Whether the first steps are offered: nothing is kept yet and they were not waved away, or they were asked for. */
class FirstSteps {
  #asked = $state(false)
  open = $derived.by(
    () =>
      this.#asked ||
      (settings.current.started !== true && shelf.items.length === 0 && waters.items.length === 0),
  )

  ask(): void {
    this.#asked = true
  }

  close(): void {
    this.#asked = false
    if (settings.current.started !== true) void settings.set({ started: true })
  }
}

export const firstSteps = new FirstSteps()
