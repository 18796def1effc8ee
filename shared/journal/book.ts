import type { EventDraft, EventKind, JournalEvent } from '@shared/schema/journal'
import { applyEvent, foldJournal, latestAt } from './fold'
import type { LockerState } from './locker-state'
import { mergeJournals } from './merge'
import { objectionTo, type Objection } from './objection'
import { missingFloats } from './run'

/** Kinds that change only what comes after them; the others can change what was said about earlier events. */
const forwardKinds: ReadonlySet<EventKind> = new Set([
  'set',
  'haul',
  'store',
  'clean',
  'inspect',
  'repair',
  'replace',
  'swap-part',
  'photo',
  'stock',
  'price',
])

/** A history held open: what it comes to is kept up to date as events are added, without reading it all again. */
export class JournalBook {
  #events: readonly JournalEvent[]
  #state: LockerState

  constructor(files: readonly (readonly JournalEvent[])[], nowMs: number) {
    const merged = mergeJournals(files)
    this.#events = merged.events
    this.#state = foldJournal(merged, nowMs)
  }

  get events(): readonly JournalEvent[] {
    return this.#events
  }

  get state(): LockerState {
    return this.#state
  }

  /**
   * What speaks against writing some events, one after the other.
   *
   * @param drafts events to be written, oldest first
   * @param nowMs  the time now
   * @returns the first objection that would leave one out, with its place; undefined where all fit
   */
  objection(
    drafts: readonly EventDraft[],
    nowMs: number,
  ): { index: number; objection: Objection } | undefined {
    const latest = latestAt(nowMs)
    // Several events are tried on a copy, since each may depend on the one before.
    const state = drafts.length > 1 ? structuredClone(this.#state) : this.#state
    for (const [index, draft] of drafts.entries()) {
      const said = { ...draft, at: draft.at ?? new Date(nowMs).toISOString() }
      const objection = this.#unknownTarget(draft) ?? objectionTo(state, said, latest)
      if (objection?.leftOut) return { index, objection }
      const id = `draft-${index}`
      if (drafts.length > 1)
        applyEvent(
          state,
          { ...said, version: 1, id, machine: 'draft', seq: index + 1 } as JournalEvent,
          latest,
        )
    }
    return undefined
  }

  /** Takes in events that were written: at once where they follow all others, else by folding again. */
  add(events: readonly JournalEvent[], nowMs: number): void {
    const last = this.#events.at(-1)
    const follows = events.every(
      (event) => forwardKinds.has(event.kind) && (last === undefined || event.at >= last.at),
    )
    const ordered = events.every((event, i) => i === 0 || event.at >= (events[i - 1]?.at ?? ''))
    const settled = !this.#state.problems.some((problem) => problem.code === 'in-the-future')
    if (!follows || !ordered || !settled) {
      const merged = mergeJournals([this.#events, events])
      this.#events = merged.events
      this.#state = foldJournal(merged, nowMs)
      return
    }
    const latest = latestAt(nowMs)
    for (const event of events) applyEvent(this.#state, event, latest)
    this.#events = [...this.#events, ...events]
    this.#state.missing = missingFloats(this.#state)
  }

  #unknownTarget(draft: EventDraft): Objection | undefined {
    if (draft.kind !== 'undo' && draft.kind !== 'correct') return undefined
    return this.#events.some((event) => event.id === draft.target)
      ? undefined
      : { code: 'unknown-target', what: 'There is no such event.', leftOut: true }
  }
}
