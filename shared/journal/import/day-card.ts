import type { EventDraft } from '@shared/schema/journal'
import type { LockerState, PotState } from '../locker-state'
import { CellRefused, clockCell, dayCell, wholeCell } from './cells'
import type { ColumnMatch } from './match-columns'
import type { BrokenRow, Table, TableRow } from './table'

/* A paper day card, typed off: a row a pot, with when it was set and hauled and what came up. */

export const dayCardWords = {
  number: ['number', 'float', 'pot', 'float number', 'no'],
  date: ['date', 'day'],
  set: ['set', 'time set', 'set at', 'down'],
  hauled: ['hauled', 'haul', 'time hauled', 'up', 'lifted'],
  kept: ['kept', 'keepers', 'legal'],
  undersized: ['undersized', 'short', 'small', 'undersize'],
  female: ['female', 'females', 'hens'],
  other: ['other', 'bycatch'],
  baitLeft: ['bait left', 'bait'],
  note: ['note', 'notes', 'remarks'],
} as const
export type DayCardField = keyof typeof dayCardWords

interface DayCardRow {
  readonly line: number
  readonly number: string
  readonly events: readonly EventDraft[]
}

export interface DayCardPreview {
  readonly rows: readonly DayCardRow[]
  readonly broken: readonly BrokenRow[]
}

export interface DayCardContext {
  /** The day of the card, where it has no column for it. */
  readonly day: string
  /** Minutes by which the place's clock is ahead of UTC. */
  readonly offsetMinutes: number
  readonly run: string
  readonly water?: string
  readonly nowMs: number
}

/**
 * Reads a day card as events, a row at a time. A row that cannot be used is told with its line and reason, and the
 * rest is kept.
 *
 * @param table   the file
 * @param match   which column holds what
 * @param state   the locker: numbers must be of pots in it
 * @param context day, clock, run and water
 * @returns rows with their events, and rows left out
 */
export function readDayCard(
  table: Table,
  match: ColumnMatch<DayCardField>,
  state: LockerState,
  context: DayCardContext,
): DayCardPreview {
  const byNumber = new Map(
    Object.values(state.pots)
      .filter((pot) => pot.status !== 'retired')
      .map((pot) => [pot.number.toLowerCase(), pot]),
  )
  const down = new Set([...byNumber.values()].filter((pot) => pot.status === 'in-water').map((pot) => pot.id))
  const rows: DayCardRow[] = []
  const broken = [...table.broken]
  for (const row of table.rows) {
    try {
      rows.push(readRow(row, match, byNumber, down, context))
    } catch (thrown) {
      if (!(thrown instanceof CellRefused)) throw thrown
      broken.push({ line: row.line, reason: thrown.message })
    }
  }
  return { rows, broken: broken.sort((a, b) => a.line - b.line) }
}

function readRow(
  row: TableRow,
  match: ColumnMatch<DayCardField>,
  byNumber: ReadonlyMap<string, PotState>,
  down: Set<string>,
  context: DayCardContext,
): DayCardRow {
  const cell = (field: DayCardField) => row.cells[match[field] ?? ''] ?? ''
  const number = cell('number')
  if (number === '') throw new CellRefused('It has no float number.')
  const pot = byNumber.get(number.toLowerCase())
  if (!pot) throw new CellRefused(`There is no pot with the number ${number}.`)
  const day = dayCell(cell('date'), 'The date') ?? context.day
  const setAt = moment(day, clockCell(cell('set'), 'The time set'), context)
  const hauledAt = moment(day, clockCell(cell('hauled'), 'The time hauled'), context, setAt)
  if (setAt === undefined && hauledAt === undefined)
    throw new CellRefused('It says neither when it was set nor when it was hauled.')
  if (setAt === undefined && !down.has(pot.id))
    throw new CellRefused(`Pot ${number} was hauled but was never set.`)
  const note = cell('note') === '' ? {} : { note: cell('note').slice(0, 400) }
  const caught = {
    kept: wholeCell(cell('kept'), 'Kept'),
    undersized: wholeCell(cell('undersized'), 'Undersized'),
    female: wholeCell(cell('female'), 'Female'),
    other: wholeCell(cell('other'), 'Other'),
  }
  const baitLeft = baitCell(cell('baitLeft'))
  const water = context.water === undefined ? {} : { water: context.water }
  const events: EventDraft[] = [
    ...(setAt === undefined
      ? []
      : [{ kind: 'set' as const, at: setAt, pot: pot.id, run: context.run, ...water }]),
    ...(hauledAt === undefined
      ? []
      : [
          {
            kind: 'haul' as const,
            at: hauledAt,
            pot: pot.id,
            ...caught,
            ...(baitLeft ? { baitLeft } : {}),
            ...note,
          },
        ]),
  ]
  if (hauledAt === undefined) down.add(pot.id)
  else down.delete(pot.id)
  return { line: row.line, number: pot.number, events }
}

/** A time of the card in UTC; a haul before its set is of the next day. Nothing may lie in the future. */
function moment(
  day: string,
  minutes: number | undefined,
  context: DayCardContext,
  after?: string,
): string | undefined {
  if (minutes === undefined) return undefined
  const midnightMs = Date.parse(`${day}T00:00:00.000Z`)
  const at = (ms: number) => new Date(ms).toISOString()
  let ms = midnightMs + (minutes - context.offsetMinutes) * 60_000
  if (after !== undefined && at(ms) <= after) ms += 86_400_000
  if (ms > context.nowMs) throw new CellRefused('It lies in the future.')
  return at(ms)
}

function baitCell(text: string): 'none' | 'some' | 'most' | undefined {
  const word = text.toLowerCase()
  if (word === '') return undefined
  if (['none', 'no', 'gone', '0'].includes(word)) return 'none'
  if (['some', 'half', 'part'].includes(word)) return 'some'
  if (['most', 'all', 'full', 'yes'].includes(word)) return 'most'
  throw new CellRefused(`Bait left “${text}” is not none, some or most.`)
}
