import type { EventDraft, EventKind, JournalEvent } from '@shared/schema/journal'
import { applyEvent, foldJournal, latestAt } from './fold'
import type { LockerState, ProblemCode } from './locker-state'
import { compareEvents, mergeJournals } from './merge'
import { objectionTo } from './objection'
import { missingFloats } from './run'

/** Kinds that speak of other events, wherever these stand. */
const amendingKinds: ReadonlySet<EventKind> = new Set(['undo', 'correct'])

/** Kinds that may change what was said about earlier events, as two pots with one number. */
const backwardKinds: ReadonlySet<EventKind> = new Set([
  ...amendingKinds,
  'add-pots',
  'lose',
  'find',
  'retire',
])

/** Problems that are told but leave nothing out. */
const harmless: ReadonlySet<ProblemCode> = new Set(['set-twice', 'number-twice'])

/** Problems that the next event, or the passing of time, may resolve. */
const unsettled: ReadonlySet<ProblemCode> = new Set(['in-the-future', 'unknown-target'])

/** What is not written yet has no place among events of the same moment; it comes after them. */
const byTimeAlone = (a: JournalEvent, b: JournalEvent) => (b.at >= a.at ? -1 : 1)

/** Why some events are not written: the first that does not fit. */
export interface Refusal {
  readonly index: number
  readonly code: ProblemCode
  readonly what: string
}

/** A history held open: what it comes to is kept up to date as events are added, without reading it all again. */
export class JournalBook {
  #events: JournalEvent[]
  #state: LockerState

  constructor(files: readonly (readonly JournalEvent[])[], nowMs: number) {
    const merged = mergeJournals(files)
    this.#events = [...merged.events]
    this.#state = foldJournal(merged, nowMs)
  }

  get events(): readonly JournalEvent[] {
    return this.#events
  }

  get state(): LockerState {
    return this.#state
  }

  /**
   * What speaks against writing some events.
   *
   * @param drafts events to be written, in order
   * @param nowMs  the time now
   * @returns the first event that would be left out, and why; undefined where all fit
   */
  objection(drafts: readonly EventDraft[], nowMs: number): Refusal | undefined {
    const now = new Date(nowMs).toISOString()
    const tried = drafts.map(
      (draft, i) =>
        ({ at: now, ...draft, version: 1, id: `draft-${i}`, machine: 'draft', seq: i + 1 }) as JournalEvent,
    )
    return this.#follows(tried, amendingKinds, byTimeAlone)
      ? this.#tryInTurn(tried, nowMs)
      : this.#tryInPlace(tried, nowMs)
  }

  /** Takes in events that were written: at once where they follow all others, else by folding again. */
  add(events: readonly JournalEvent[], nowMs: number): void {
    const settled = !this.#state.problems.some(({ code }) => unsettled.has(code))
    if (!settled || !this.#follows(events, backwardKinds, compareEvents)) {
      const merged = mergeJournals([this.#events, events])
      this.#events = [...merged.events]
      this.#state = foldJournal(merged, nowMs)
      return
    }
    const latest = latestAt(nowMs)
    for (const event of events) applyEvent(this.#state, event, latest)
    this.#events.push(...events)
    this.#state.missing = missingFloats(this.#state)
  }

  /** Whether events come after all others, in order, and none is of the kinds that reach back. */
  #follows(
    events: readonly JournalEvent[],
    reachingBack: ReadonlySet<EventKind>,
    compare: (a: JournalEvent, b: JournalEvent) => number,
  ): boolean {
    let last = this.#events.at(-1)
    return events.every((event) => {
      const after = (last === undefined || compare(last, event) < 0) && !reachingBack.has(event.kind)
      last = event
      return after
    })
  }

  /** Each event on what came of those before; several on a copy, since each may depend on the one before. */
  #tryInTurn(events: readonly JournalEvent[], nowMs: number): Refusal | undefined {
    const latest = latestAt(nowMs)
    const state = events.length > 1 ? structuredClone(this.#state) : this.#state
    for (const [index, event] of events.entries()) {
      const objection = objectionTo(state, event, latest)
      if (objection?.leftOut) return { index, code: objection.code, what: objection.what }
      if (events.length > 1) applyEvent(state, event, latest)
    }
    return undefined
  }

  /** Events of an earlier time, and those that reach back, are tried where they would stand in the history. */
  #tryInPlace(events: readonly JournalEvent[], nowMs: number): Refusal | undefined {
    const { problems } = foldJournal(mergeJournals([this.#events, events]), nowMs)
    for (const [index, { id }] of events.entries()) {
      const problem = problems.find(({ event, code }) => event === id && !harmless.has(code))
      if (problem) return { index, code: problem.code, what: problem.what }
    }
    return undefined
  }
}
