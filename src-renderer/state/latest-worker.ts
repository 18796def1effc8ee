/**
 * Asks a worker, and only ever for the newest: while one answer is on its way, of all that is asked meanwhile the
 * last alone is kept.
 */
export class LatestWorker<Question, Answer> {
  #busy = false
  #next: Question | undefined

  constructor(
    private readonly worker: Worker,
    private readonly onanswer: (answer: Answer) => void,
    private readonly onfault: () => void,
  ) {
    worker.onmessage = (event: MessageEvent<Answer>) => {
      this.onanswer(event.data)
      this.#goOn()
    }
    worker.onerror = () => {
      this.onfault()
      this.#goOn()
    }
  }

  ask(question: Question): void {
    if (this.#busy) {
      this.#next = question
      return
    }
    this.#busy = true
    this.worker.postMessage(question)
  }

  close(): void {
    this.worker.terminate()
  }

  #goOn(): void {
    this.#busy = false
    const next = this.#next
    this.#next = undefined
    if (next !== undefined) this.ask(next)
  }
}
