import type { JournalEvent } from '@shared/schema/journal'

/** Several machines' events as one history, with what did not agree. */
export interface MergedJournal {
  readonly events: readonly JournalEvent[]
  /** Events whose id another, different event also has; the first in order was kept. */
  readonly sameId: readonly JournalEvent[]
}

/** Order of the history: by time, then machine, then its own count, then id. */
export function compareEvents(a: JournalEvent, b: JournalEvent): number {
  if (a.at !== b.at) return a.at < b.at ? -1 : 1
  if (a.machine !== b.machine) return a.machine < b.machine ? -1 : 1
  if (a.seq !== b.seq) return a.seq - b.seq
  return a.id < b.id ? -1 : a.id > b.id ? 1 : 0
}

/**
 * Merges events of any number of machines into one history, in any order of arrival. An event seen twice counts
 * once.
 *
 * @param files events by file, in any order within and between files
 * @returns the history, the same for the same set of events however it was split
 */
export function mergeJournals(files: readonly (readonly JournalEvent[])[]): MergedJournal {
  const byId = new Map<string, JournalEvent>()
  const sameId: JournalEvent[] = []
  for (const file of files)
    for (const event of file) {
      const known = byId.get(event.id)
      if (known === undefined) byId.set(event.id, event)
      else if (known !== event) settleSameId(byId, sameId, known, event)
    }
  const distinct = new Map(sameId.map((event) => [canonical(event), event]))
  return {
    events: [...byId.values()].sort(compareEvents),
    sameId: [...distinct.values()].sort(compareEvents),
  }
}

/** Two events with one id are one if they say the same, else the one first in order stands. */
function settleSameId(
  byId: Map<string, JournalEvent>,
  sameId: JournalEvent[],
  known: JournalEvent,
  event: JournalEvent,
) {
  const [a, b] = [canonical(known), canonical(event)]
  if (a === b) return
  const first = (compareEvents(known, event) || (a < b ? -1 : 1)) < 0
  if (!first) byId.set(event.id, event)
  sameId.push(first ? event : known)
}

/** JSON with the keys of every object in order, so that equal events have equal text. */
function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner !== null && typeof inner === 'object' && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([a], [b]) => (a < b ? -1 : 1)))
      : inner,
  )
}
