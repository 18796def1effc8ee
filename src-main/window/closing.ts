// Long enough for a slow disk, short enough that a stuck page cannot hold the program open.
const longestWaitMs = 4000

/** A window that is closing first lets its page save what it holds, then goes; what could not be saved holds it. */
export class Closing {
  #state: 'open' | 'asked' | 'done' = 'open'
  #timer: NodeJS.Timeout | undefined

  constructor(
    /** Asks the page to save now. */
    readonly ask: () => void,
    /** Closes for good. */
    readonly close: () => void,
    /** Asks the reader whether to close though something could not be saved. */
    readonly leavesUnsaved: () => Promise<boolean>,
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

  /** The page is done saving, and says whether it could. */
  async flushed(saved: boolean): Promise<void> {
    if (this.#state !== 'asked') return
    clearTimeout(this.#timer)
    if (saved || (await this.leavesUnsaved())) this.#finish()
    else this.#state = 'open'
  }

  #finish(): void {
    clearTimeout(this.#timer)
    this.#state = 'done'
    this.close()
  }
}
