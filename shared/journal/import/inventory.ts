import { InstalledPartSchema, partKinds, type InstalledPart, type PartKind } from '@shared/schema/gear'
import * as v from 'valibot'
import type { LockerState } from '../locker-state'
import { CellRefused, dayCell, numberCell } from './cells'
import type { ColumnMatch } from './match-columns'
import type { BrokenRow, Table, TableRow } from './table'

/* An existing list of gear: a row a pot, or a row a part with the pot's number repeated. */

export const inventoryWords = {
  number: ['number', 'float number', 'pot', 'no', 'float'],
  design: ['design', 'type', 'model', 'kind of pot'],
  kind: ['part', 'kind', 'component'],
  material: ['material', 'made of'],
  diameterMm: ['diameter mm', 'diameter', 'size mm', 'size'],
  lengthM: ['length m', 'length'],
  cost: ['cost', 'price', 'paid'],
  installedOn: ['installed on', 'installed', 'bought', 'date', 'since'],
  supplierNote: ['supplier', 'from', 'note', 'notes'],
} as const
export type InventoryField = keyof typeof inventoryWords

/** A pot to be added, with its parts but without ids; these are given when it is written. */
interface InventoryPot {
  readonly number: string
  readonly design: string
  readonly lines: readonly number[]
  readonly parts: readonly Omit<InstalledPart, 'id'>[]
}

export interface InventoryPreview {
  readonly pots: readonly InventoryPot[]
  readonly broken: readonly BrokenRow[]
}

export interface InventoryContext {
  /** Ids of designs by the name used in the file; and the one taken where the file has none. */
  readonly designs: Readonly<Record<string, string>>
  readonly usualDesign: string
  /** Day taken where the file has none. */
  readonly today: string
}

/**
 * Reads an inventory. Rows with one number make one pot; a row that cannot be used is told with its line and
 * reason, and the rest is kept. Numbers that are already in use are refused.
 *
 * @param table   the file
 * @param match   which column holds what
 * @param state   the locker
 * @param context designs and today
 * @returns pots to add, and rows left out
 */
export function readInventory(
  table: Table,
  match: ColumnMatch<InventoryField>,
  state: LockerState,
  context: InventoryContext,
): InventoryPreview {
  const taken = new Set(
    Object.values(state.pots)
      .filter((pot) => pot.status !== 'retired')
      .map((pot) => pot.number.toLowerCase()),
  )
  const pots = new Map<
    string,
    { number: string; design: string; lines: number[]; parts: Omit<InstalledPart, 'id'>[] }
  >()
  const broken = [...table.broken]
  for (const row of table.rows) {
    try {
      const { number, design, part } = readRow(row, match, context)
      if (taken.has(number.toLowerCase()))
        throw new CellRefused(`The number ${number} is already on a pot in the locker.`)
      const pot = pots.get(number.toLowerCase()) ?? {
        number,
        design: design ?? context.usualDesign,
        lines: [],
        parts: [],
      }
      if (design !== undefined && design !== pot.design && pot.lines.length > 0)
        throw new CellRefused(`Pot ${number} has another design further up.`)
      if (!part && pot.lines.length > 0)
        throw new CellRefused(`The number ${number} stands twice in the file.`)
      pot.lines.push(row.line)
      if (part) pot.parts.push(part)
      pots.set(number.toLowerCase(), pot)
    } catch (thrown) {
      if (!(thrown instanceof CellRefused)) throw thrown
      broken.push({ line: row.line, reason: thrown.message })
    }
  }
  return { pots: [...pots.values()], broken: broken.sort((a, b) => a.line - b.line) }
}

function readRow(row: TableRow, match: ColumnMatch<InventoryField>, context: InventoryContext) {
  const cell = (field: InventoryField) => row.cells[match[field] ?? ''] ?? ''
  const number = cell('number')
  if (number === '') throw new CellRefused('It has no float number.')
  if (number.length > 12) throw new CellRefused(`The number “${number}” is longer than 12 letters.`)
  const named = cell('design')
  const design = named === '' ? undefined : context.designs[named.toLowerCase()]
  if (named !== '' && design === undefined) throw new CellRefused(`There is no design called “${named}”.`)
  const installedOn = dayCell(cell('installedOn'), 'The date') ?? context.today
  if (installedOn > context.today) throw new CellRefused(`The date ${installedOn} lies in the future.`)
  const kind = kindCell(cell('kind'))
  if (!kind) return { number, design, part: undefined }
  const part: Omit<InstalledPart, 'id'> = {
    ...{ kind, installedOn },
    ...optional('material', cell('material').slice(0, 40) || undefined),
    ...optional('diameterMm', numberCell(cell('diameterMm'), 'The diameter')),
    ...optional('lengthM', numberCell(cell('lengthM'), 'The length')),
    ...optional('cost', numberCell(cell('cost'), 'The cost')),
    ...optional('supplierNote', cell('supplierNote').slice(0, 400) || undefined),
  }
  const fits = v.safeParse(freshPart, part)
  if (!fits.success) throw new CellRefused(sizeRefused(fits.issues[0]))
  return { number, design, part }
}

const freshPart = v.omit(InstalledPartSchema, ['id'])

/** Figures that no part can have are told by the name of their column. */
function sizeRefused(issue: v.BaseIssue<unknown>): string {
  const field = v.getDotPath(issue)
  const [meaning] = field !== null && field in inventoryWords ? inventoryWords[field as InventoryField] : []
  const named = meaning === undefined ? 'A figure' : `The ${meaning.replace(/ m+$/, '')}`
  return `${named} ${String(issue.input)} is more or less than a part can have.`
}

function kindCell(text: string): PartKind | undefined {
  const word = text.toLowerCase().replace(/[^a-z]+/g, '-')
  if (word === '') return undefined
  const kind = partKinds.find((known) => known === word) ?? otherNames[word]
  if (!kind) throw new CellRefused(`“${text}” is not a kind of part: ${partKinds.join(', ')}.`)
  return kind
}

/** Other words of the trade for the same parts. */
const otherNames: Readonly<Record<string, PartKind>> = {
  line: 'rope',
  net: 'netting',
  mesh: 'netting',
  buoy: 'float',
  cord: 'release-cord',
  'rot-cord': 'release-cord',
  'bait-cage': 'bait-basket',
  tie: 'ties',
  'cable-ties': 'ties',
  hook: 'door-hook',
  wrap: 'chafe',
}

function optional<K extends string, T>(key: K, value: T | undefined): Partial<Record<K, T>> {
  return value === undefined ? {} : ({ [key]: value } as Record<K, T>)
}
