import type { EventKind, EventOf, JournalEvent } from '@shared/schema/journal'
import { amend } from './amend'
import type { JournalProblem, LockerState } from './locker-state'
import type { MergedJournal } from './merge'
import { applyGearEvent } from './fold-gear'
import { applyWorkEvent } from './fold-work'
import { missingFloats } from './run'
import { objectionTo } from './objection'
import { compareProblems, problemWith } from './problem'

/** How far two machines' clocks may differ before a time counts as being in the future [ms]. */
const clockSlackMs = 10 * 60_000

/** Time after which an event lies in the future, in UTC. */
export function latestAt(nowMs: number): string {
  return new Date(nowMs + clockSlackMs).toISOString()
}

/**
 * What a history comes to: pots, parts with what they have been through, runs, stock, prices and problems.
 *
 * @param journal a merged history
 * @param nowMs   the time now [ms since 1970]; what is later is flagged and left out
 * @returns plain data; the same for the same set of events, in any order of arrival
 */
export function foldJournal(journal: MergedJournal, nowMs: number): LockerState {
  const problems: JournalProblem[] = journal.sameId.map((event) =>
    problemWith('id-twice', event, 'Two different events have one id; the earlier stands.'),
  )
  const state: LockerState = {
    pots: byId(),
    parts: byId(),
    runs: byId(),
    stock: byId(),
    prices: byId(),
    missing: [],
    problems,
  }
  const standing = amend(journal.events, problems)
  const latest = latestAt(nowMs)
  for (const event of standing) applyEvent(state, event, latest)
  noteSharedNumbers(state, standing)
  state.missing = missingFloats(state)
  problems.sort(compareProblems)
  return state
}

/** An empty record without inherited names, so that no id is taken for one of them. */
function byId<T>(): Record<string, T> {
  return Object.create(null) as Record<string, T>
}

/**
 * Applies one event to a state that holds everything before it; what does not fit is noted.
 *
 * @param state changed in place
 * @param event later in order than all before, and neither undone nor corrected
 * @param latest time after which it lies in the future, in UTC
 */
export function applyEvent(state: LockerState, event: JournalEvent, latest: string): void {
  const objection = objectionTo(state, event, latest)
  if (objection) state.problems.push(problemWith(objection.code, event, objection.what))
  if (objection?.leftOut) return
  if (isWork(event)) applyWorkEvent(state, event)
  else applyGearEvent(state, event)
}

const workKinds = [
  'set',
  'haul',
  'lose',
  'find',
  'retire',
  'store',
  'clean',
] as const satisfies readonly EventKind[]
export type WorkEvent = EventOf<(typeof workKinds)[number]>
export type GearEvent = Exclude<JournalEvent, WorkEvent>

const work: ReadonlySet<EventKind> = new Set(workKinds)

function isWork(event: JournalEvent): event is WorkEvent {
  return work.has(event.kind)
}

/** Two pots in use with one number cannot be told apart on the water. */
function noteSharedNumbers(state: LockerState, events: readonly JournalEvent[]): void {
  const owner = new Map<string, string>()
  const shared = new Map<string, string>()
  for (const pot of Object.values(state.pots)) {
    if (pot.status === 'retired' || pot.status === 'lost') continue
    const first = owner.get(pot.number)
    if (first === undefined) owner.set(pot.number, pot.id)
    else shared.set(pot.id, pot.number)
  }
  if (shared.size === 0) return
  for (const event of events)
    if (event.kind === 'add-pots')
      for (const { pot } of event.pots) {
        const number = shared.get(pot)
        if (number !== undefined)
          state.problems.push(
            problemWith('number-twice', event, `Two pots in use carry the number ${number}.`),
          )
      }
}
