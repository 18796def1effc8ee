import type { Notice } from '@shared/contract/bridge'

/** Keeps what is told to a page that does not listen yet, so that a file opened at the start is not lost. */
export class NoticePost {
  #waiting: Notice[] | undefined = []

  constructor(readonly pass: (notice: Notice) => void) {}

  send(notice: Notice): void {
    if (this.#waiting) this.#waiting.push(notice)
    else this.pass(notice)
  }

  /** The page listens from now on. */
  deliver(): void {
    const waiting = this.#waiting ?? []
    this.#waiting = undefined
    for (const notice of waiting) this.pass(notice)
  }
}
