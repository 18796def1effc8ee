import { undoneIn } from './amend'
import type { JournalEvent } from '@shared/schema/journal'

/** One event of the history with whether it still counts. */
export interface HistoryLine {
  readonly event: JournalEvent
  readonly undone: boolean
  readonly corrected: boolean
}

export interface HistoryFilter {
  readonly pot?: string
  readonly limit: number
}

/**
 * The history, newest first.
 *
 * @param events in order
 * @param filter a pot, and how many at most
 * @returns lines; whether an undo was itself undone is taken into account
 */
export function historyOf(events: readonly JournalEvent[], { pot, limit }: HistoryFilter): HistoryLine[] {
  const isUndone = undoneIn(events)
  const corrected = new Set<string>()
  for (const event of events) if (event.kind === 'correct' && !isUndone(event.id)) corrected.add(event.target)
  const parts = pot === undefined ? undefined : partsEver(events, pot)
  const lines: HistoryLine[] = []
  for (const event of events.toReversed()) {
    if (lines.length >= limit) break
    if (parts && !isAbout(event, pot, parts)) continue
    lines.push({ event, undone: isUndone(event.id), corrected: corrected.has(event.id) })
  }
  return lines
}

/** Parts that were ever put on a pot. */
function partsEver(events: readonly JournalEvent[], pot: string): ReadonlySet<string> {
  const parts = new Set<string>()
  for (const event of events) {
    if (event.kind === 'add-pots')
      for (const added of event.pots)
        if (added.pot === pot) for (const part of added.parts) parts.add(part.id)
    if (event.kind === 'swap-part' && event.to === pot) parts.add(event.part)
    if (event.kind === 'replace' && parts.has(event.part)) parts.add(event.with.id)
  }
  return parts
}

function isAbout(event: JournalEvent, pot: string | undefined, parts: ReadonlySet<string>): boolean {
  if ('pot' in event) return event.pot === pot
  if ('part' in event) return parts.has(event.part)
  return event.kind === 'add-pots' && event.pots.some((added) => added.pot === pot)
}
