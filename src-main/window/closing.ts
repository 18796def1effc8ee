// Long enough for a slow disk, short enough that a stuck page cannot hold the program open.
const longestWaitMs = 4000

/** A window that is closing first lets its page save what it holds, then goes. */
export class Closing {
  #state: 'open' | 'asked' | 'done' = 'open'
  #timer: NodeJS.Timeout | undefined

  constructor(
    /** Asks the page to save now. */
    readonly ask: () => void,
    /** Closes for good. */
    readonly close: () => void,
    readonly waitMs = longestWaitMs,
  ) {}

  /** The window wants to close; returns whether it may at once. */
  begin(): boolean {
    if (this.#state === 'done') return true
    if (this.#state === 'open') {
      this.#state = 'asked'
      this.#timer = setTimeout(() => this.#finish(), this.waitMs)
      this.ask()
    }
    return false
  }

  /** The page has saved. */
  flushed(): void {
    if (this.#state === 'asked') this.#finish()
  }

  #finish(): void {
    clearTimeout(this.#timer)
    this.#state = 'done'
    this.close()
  }
}
