import { OwnMaterialsSchema, type OwnMaterials } from '@shared/schema/materials'
import { readDocument } from '@shared/schema/read-document'
import type { Result } from '@shared/units/result'
import type { TableName } from './row-forms'

export type Row = Readonly<Record<string, unknown>> & { readonly id: string }

export const ownRows = (own: OwnMaterials, table: TableName): readonly Row[] => own[table] ?? []

/** A row as it stands in a table with its id: prices for one thing differ by what they are for. */
export const keyOf = (table: TableName, row: Row) =>
  table === 'prices' ? `${row.id} ${String(row['each'])}` : row.id

/** The reader's tables with one row put in, in place of one of the same id; or what is wrong with it. */
export function withRow(own: OwnMaterials, table: TableName, row: Row): Result<OwnMaterials> {
  const others = ownRows(own, table).filter((one) => keyOf(table, one) !== keyOf(table, row))
  return readDocument(OwnMaterialsSchema, { ...own, [table]: [...others, row] }, 'materials')
}

export function withoutRow(own: OwnMaterials, table: TableName, key: string): Result<OwnMaterials> {
  const left = ownRows(own, table).filter((one) => keyOf(table, one) !== key)
  return readDocument(OwnMaterialsSchema, { ...own, [table]: left }, 'materials')
}

/** An id out of a name: `Old bridge steel` gives `old-bridge-steel`. */
export const idFrom = (name: string) =>
  name
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 64)
