import { JournalEventSchema, type EventOf, type JournalEvent } from '@shared/schema/journal'
import * as v from 'valibot'
import type { JournalProblem } from './locker-state'
import { compareEvents } from './merge'
import { problemWith } from './problem'

/**
 * Applies what was taken back and what was corrected.
 *
 * An event that was undone is left out, and so is its correction; undoing an undo brings the event back. Of
 * several corrections of one event each changes the fields it names, in order. Where an undo or correction stands
 * in time does not matter.
 *
 * @param events   a merged history in order
 * @param problems where what does not add up is noted
 * @returns the events that count, corrected, in order; neither undos nor corrections
 */
export function amend(events: readonly JournalEvent[], problems: JournalProblem[]): readonly JournalEvent[] {
  const undos = byTarget(events, 'undo')
  const corrections = byTarget(events, 'correct')
  if (undos.size === 0 && corrections.size === 0) return events
  noteUnknownTargets(events, [undos, corrections], problems)
  const isUndone = undoneBy(undos)
  let moved = false
  const standing: JournalEvent[] = []
  for (const event of events) {
    if (event.kind === 'undo' || event.kind === 'correct' || isUndone(event.id)) continue
    const amended = (corrections.get(event.id) ?? [])
      .filter((correction) => !isUndone(correction.id))
      .reduce((current, correction) => corrected(current, correction, problems), event as JournalEvent)
    moved ||= amended.at !== event.at
    standing.push(amended)
  }
  return moved ? standing.sort(compareEvents) : standing
}

/** Whether an event is taken back by an undo that itself stands; a ring of undos takes nothing back. */
function undoneBy(undos: ReadonlyMap<string, readonly EventOf<'undo'>[]>): (id: string) => boolean {
  const known = new Map<string, boolean>()
  const isUndone = (id: string, path: ReadonlySet<string>): boolean => {
    const settled = known.get(id)
    if (settled !== undefined) return settled
    if (path.has(id)) return false
    const below = new Set(path).add(id)
    const undone = (undos.get(id) ?? []).some((undo) => !isUndone(undo.id, below))
    known.set(id, undone)
    return undone
  }
  const top: ReadonlySet<string> = new Set()
  return (id) => isUndone(id, top)
}

function byTarget<K extends 'undo' | 'correct'>(
  events: readonly JournalEvent[],
  kind: K,
): Map<string, EventOf<K>[]> {
  const map = new Map<string, EventOf<K>[]>()
  const isThat = (event: JournalEvent): event is EventOf<K> & { target: string } => event.kind === kind
  for (const event of events) {
    if (!isThat(event)) continue
    const list = map.get(event.target)
    if (list) list.push(event)
    else map.set(event.target, [event])
  }
  return map
}

/** Tells of a history which of its events are taken back. */
export function undoneIn(events: readonly JournalEvent[]): (id: string) => boolean {
  return undoneBy(byTarget(events, 'undo'))
}

const fixedFields = new Set(['id', 'machine', 'seq', 'kind', 'version'])

function corrected(
  event: JournalEvent,
  correction: EventOf<'correct'>,
  problems: JournalProblem[],
): JournalEvent {
  const fixed = Object.keys(correction.fields).find((field) => fixedFields.has(field))
  const parsed = v.safeParse(JournalEventSchema, { ...event, ...correction.fields })
  if (fixed === undefined && parsed.success) return parsed.output
  const field = fixed ?? (parsed.issues ? v.getDotPath(parsed.issues[0]) : undefined) ?? 'a field'
  problems.push(
    problemWith('bad-correction', correction, `A correction of ${field} does not fit and was left out.`),
  )
  return event
}

function noteUnknownTargets(
  events: readonly JournalEvent[],
  amendments: readonly ReadonlyMap<string, readonly (EventOf<'undo'> | EventOf<'correct'>)[]>[],
  problems: JournalProblem[],
) {
  const ids = new Set(events.map((event) => event.id))
  for (const byTarget of amendments)
    for (const [target, list] of byTarget)
      if (!ids.has(target))
        for (const event of list)
          problems.push(
            problemWith('unknown-target', event, 'It changes something that has not arrived here yet.'),
          )
}
