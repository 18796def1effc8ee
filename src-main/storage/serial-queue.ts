/** Runs pieces of work one after the other, in the order they were asked for; one failure stops no other. */
export class SerialQueue {
  #tail: Promise<unknown> = Promise.resolve()

  run<T>(work: () => Promise<T>): Promise<T> {
    const next = this.#tail.then(work)
    this.#tail = next.catch(() => undefined)
    return next
  }

  /** Settles once everything asked for so far is done. */
  async idle(): Promise<void> {
    await this.#tail
  }
}
