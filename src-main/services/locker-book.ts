import type { Journal } from '@main/storage/journal'
import { SerialQueue } from '@main/storage/serial-queue'
import { JournalBook } from '@shared/journal/book'
import type { EventDraft, JournalEvent } from '@shared/schema/journal'
import { err, ok, type Result } from '@shared/units/result'

/**
 * The journal held open for the locker: read once, then kept up to date as events are added here or arrive in
 * other machines' files.
 */
export class LockerBook {
  readonly #queue = new SerialQueue()
  #book: JournalBook | undefined
  /** The journal's own list when it was last taken in, and how long it was. */
  #read: readonly JournalEvent[] = []
  #seen = 0

  constructor(
    readonly journal: Journal,
    readonly now: () => Date,
  ) {}

  /** The book as the files stand now, and files that could not be read to the end. */
  open(): Promise<{ book: JournalBook; trouble: string[] }> {
    return this.#queue.run(() => this.#open())
  }

  /** Writes events; all are refused where one does not fit the history, each judged by what came before. */
  record(drafts: readonly EventDraft[]): Promise<Result<{ book: JournalBook; events: JournalEvent[] }>> {
    return this.#queue.run(async () => {
      const { book } = await this.#open()
      const refused = book.objection(drafts, this.now().getTime())
      if (refused)
        return err({
          code: 'invalid',
          message: `Nothing was written. ${refused.what.replace(/; (it|the haul) was left out\.$/, '.')}`,
          path: `events.${refused.index}`,
        })
      const written = await this.journal.append(drafts)
      if (!written.ok) return written
      book.add(written.value, this.now().getTime())
      this.#seen += written.value.length
      return ok({ book, events: written.value })
    })
  }

  async #open(): Promise<{ book: JournalBook; trouble: string[] }> {
    const { events, problems } = await this.journal.load()
    if (!this.#book || events !== this.#read || events.length !== this.#seen) {
      this.#book = new JournalBook([events], this.now().getTime())
      this.#read = events
      this.#seen = events.length
    }
    return { book: this.#book, trouble: problems.map((problem) => problem.message) }
  }
}
