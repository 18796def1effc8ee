import { route } from '@renderer/state/route.svelte'
import { settings } from '@renderer/state/settings.svelte'
import { tourSteps, type TourStep } from './steps'

/** A short walk past the controls that matter, one step at a time. */
class Tour {
  #at = $state<number>()
  step = $derived.by((): TourStep | undefined => (this.#at === undefined ? undefined : tourSteps[this.#at]))
  number = $derived((this.#at ?? 0) + 1)
  isFirst = $derived(this.#at === 0)
  isLast = $derived(this.#at === tourSteps.length - 1)

  start(): void {
    route.go('bench')
    this.#at = 0
  }
  next(): void {
    if (this.isLast) this.end()
    else if (this.#at !== undefined) this.#at += 1
  }
  back(): void {
    if (this.#at !== undefined && this.#at > 0) this.#at -= 1
  }
  end(): void {
    this.#at = undefined
    if (settings.current.tourSeen !== true) void settings.set({ tourSeen: true })
  }
}

export const tour = new Tour()
