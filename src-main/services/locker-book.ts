import type { Journal } from '@main/storage/journal'
import { JournalBook } from '@shared/journal/book'
import type { EventDraft, JournalEvent } from '@shared/schema/journal'
import { err, type Result } from '@shared/units/result'

/**
 * The journal held open for the locker: read once, then kept up to date as events are added here or arrive in
 * other machines' files.
 */
export class LockerBook {
  #book: JournalBook | undefined
  /** What the files held when they were last read. */
  #seen = ''

  constructor(
    readonly journal: Journal,
    readonly now: () => Date,
  ) {}

  /** The book as the files stand now, and files that could not be read to the end. */
  async open(): Promise<{ book: JournalBook; trouble: string[] }> {
    const { events, problems } = await this.journal.load()
    const seen = fingerprint(events)
    if (!this.#book || seen !== this.#seen) {
      this.#book = new JournalBook([events], this.now().getTime())
      this.#seen = seen
    }
    return { book: this.#book, trouble: problems.map((problem) => problem.message) }
  }

  /** Writes events; all are refused where one does not fit the history. */
  async record(
    drafts: readonly EventDraft[],
  ): Promise<Result<{ book: JournalBook; events: JournalEvent[] }>> {
    const { book } = await this.open()
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
    this.#seen = fingerprint((await this.journal.load()).events)
    return { ok: true, value: { book, events: written.value } }
  }
}

/** Files only grow, so the number of events and the last of them tell whether any did. */
function fingerprint(events: readonly JournalEvent[]): string {
  return `${events.length} ${events.at(-1)?.id ?? ''}`
}
