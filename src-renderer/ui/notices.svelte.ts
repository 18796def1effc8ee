interface Notice {
  readonly id: number
  readonly text: string
  readonly tone: 'plain' | 'fails'
  readonly undo: (() => void) | undefined
  /** A newer notice on the same topic takes its place. */
  readonly topic: string | undefined
}

const STAYS_MS = 8000

/** Short notes at the foot of the window, with a way back where there is one, and the voice for live results. */
class Notices {
  list = $state.raw<readonly Notice[]>([])
  /** Text for the polite live region; what changed while a hand was on a slider. */
  spoken = $state('')
  #next = 1
  #speaking: ReturnType<typeof setTimeout> | undefined

  say(text: string, options: { undo?: () => void; tone?: Notice['tone']; topic?: string } = {}): void {
    const { tone = 'plain', undo, topic } = options
    const notice: Notice = { id: this.#next++, text, tone, undo, topic }
    const others = this.list.filter(
      (one) => one.text !== text && (topic === undefined || one.topic !== topic),
    )
    this.list = [...others.slice(-2), notice]
    if (notice.tone === 'plain') setTimeout(() => this.dismiss(notice.id), STAYS_MS)
  }

  dismiss(id: number): void {
    this.list = this.list.filter((notice) => notice.id !== id)
  }

  /** Takes back what was said on a topic and is over. */
  withdraw(topic: string): void {
    this.list = this.list.filter((notice) => notice.topic !== topic)
  }

  /** Says `text` to a screen reader once nothing newer has come for half a second. */
  announce(text: string): void {
    clearTimeout(this.#speaking)
    this.#speaking = setTimeout(() => (this.spoken = text), 500)
  }
}

export const notices = new Notices()
