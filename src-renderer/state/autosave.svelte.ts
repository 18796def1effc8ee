import { notices } from '@renderer/ui/notices.svelte'

const WAIT_MS = 600

/** Topic of what is said where something could not be saved. It is taken back once it could. */
export const unsaved = 'unsaved'

/** Saves some time after the last change, at once when asked, and never two at a time. */
export class Autosave {
  state = $state<'clean' | 'waiting' | 'failed'>('clean')
  #timer: ReturnType<typeof setTimeout> | undefined
  #touches = 0
  #running: Promise<void> = Promise.resolve()

  /** @param save writes what has changed and says whether it could */
  constructor(private readonly save: () => Promise<boolean>) {}

  touch(): void {
    this.#touches += 1
    this.state = 'waiting'
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => void this.flush(), WAIT_MS)
  }

  /** Saves now what is still waiting, as before the window closes. */
  flush(): Promise<void> {
    clearTimeout(this.#timer)
    this.#running = this.#running.then(async () => {
      if (this.state === 'clean') return
      this.state = 'waiting'
      const touches = this.#touches
      const saved = await this.save()
      if (saved) notices.withdraw(unsaved)
      // What changed while the disk was busy is still to be saved.
      if (this.#touches === touches) this.state = saved ? 'clean' : 'failed'
    })
    return this.#running
  }
}
