import type { ProposeOutcome, ProposeProgress } from '@shared/match/propose/propose'
import type { ProposeAnswer, ProposeQuestion } from './propose-question'
import { proposeWorker } from './workers'

/** A search for a design: running, found, or stopped. */
class ProposeState {
  progress = $state.raw<ProposeProgress>()
  outcome = $state.raw<ProposeOutcome>()
  /** What was asked for the outcome shown. */
  asked = $state.raw<ProposeQuestion>()
  fault = $state<string>()
  running = $state(false)
  #worker: Worker | undefined

  start(question: ProposeQuestion): void {
    this.stop()
    this.running = true
    this.outcome = undefined
    this.fault = undefined
    this.asked = question
    const worker = proposeWorker()
    this.#worker = worker
    worker.onmessage = ({ data }: MessageEvent<ProposeAnswer>) => this.#take(data)
    worker.onerror = (event) => {
      this.fault = event.message
      this.stop()
    }
    worker.postMessage(question)
  }

  stop(): void {
    this.#worker?.terminate()
    this.#worker = undefined
    this.running = false
    this.progress = undefined
  }

  #take(answer: ProposeAnswer): void {
    if (answer.kind === 'progress') {
      this.progress = answer.progress
      return
    }
    if (answer.kind === 'outcome') this.outcome = answer.outcome
    else this.fault = answer.message
    this.stop()
  }
}

export const proposing = new ProposeState()
