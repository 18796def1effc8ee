import type { JournalBook } from '@shared/journal/book'
import { withOverrides } from '@shared/schema/assumption'
import { dueCsv, eventsCsv, partsCsv, shoppingCsv } from '@shared/season/csv'
import { dueList, type DueItem } from '@shared/season/due'
import { lockerLives, type LockerContext, type PartReport } from '@shared/season/locker-lives'
import { shoppingList } from '@shared/season/shopping'
import { type SurroundingSources, surroundingsOf } from '@shared/season/surroundings'
import { wearAssumptions } from '@shared/wear/assumptions'

/** What the season's lists need beside the journal. */
export interface SeasonSources {
  readonly now: () => Date
  readonly around: () => Promise<SurroundingSources>
  /** The user's own figures by key. */
  readonly overrides: () => Readonly<Record<string, number>>
}

/** A season's months where none are named. */
export const usualAheadMonths = 6

export interface Season {
  readonly context: LockerContext
  readonly reports: readonly PartReport[]
  readonly due: readonly DueItem[]
}

/** How every part stands and what is due, at a time and for the months ahead. */
export async function seasonOf(
  book: JournalBook,
  sources: SeasonSources,
  nowMs: number,
  aheadMonths: number,
): Promise<Season> {
  const context: LockerContext = {
    ...{ nowMs, aheadMonths },
    sheet: withOverrides(wearAssumptions, sources.overrides()),
    around: surroundingsOf(await sources.around()),
  }
  const reports = lockerLives(book.state, context)
  return { context, reports, due: dueList(book.state, reports, context) }
}

export interface TableRequest {
  readonly what: 'parts' | 'events' | 'due' | 'shopping'
  readonly aheadMonths?: number | undefined
  readonly on?: string | undefined
}

/** One table of the locker as CSV. */
export async function lockerTable(
  request: TableRequest,
  book: JournalBook,
  sources: SeasonSources,
): Promise<{ fileName: string; text: string }> {
  const nowMs = request.on === undefined ? sources.now().getTime() : Date.parse(request.on)
  const fileName = `${request.what}-${new Date(nowMs).toISOString().slice(0, 10)}.csv`
  if (request.what === 'parts') return { fileName, text: partsCsv(book.state, nowMs) }
  if (request.what === 'events') return { fileName, text: eventsCsv(book.events, book.state) }
  const { due } = await seasonOf(book, sources, nowMs, request.aheadMonths ?? usualAheadMonths)
  return { fileName, text: request.what === 'due' ? dueCsv(due) : shoppingCsv(shoppingList(due, book.state)) }
}
