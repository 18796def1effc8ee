import Papa from 'papaparse'

/** A table read from text: its columns by name, and its rows as they stand. */
export interface Table {
  readonly columns: readonly string[]
  readonly rows: readonly TableRow[]
  /** Rows that could not be read as part of the table. */
  readonly broken: readonly BrokenRow[]
}

export interface TableRow {
  /** Line in the file, the header being 1. */
  readonly line: number
  readonly cells: Readonly<Record<string, string>>
}

/** A row that was left out, and why. */
export interface BrokenRow {
  readonly line: number
  readonly reason: string
}

/**
 * Reads comma-, semicolon- or tab-separated text with a header line. Rows with more cells than columns, or with
 * a quote left open, are told and left out; the rest is kept.
 *
 * @param text the file's text
 * @returns columns, rows and what could not be read
 */
export function readTable(text: string): Table {
  const parsed = Papa.parse<string[]>(text.replace(/^\uFEFF/, ''), { skipEmptyLines: false })
  const [header = [], ...body] = parsed.data
  const columns = header.map((column) => column.trim())
  const unreadable = new Map(
    parsed.errors
      .filter((error) => error.code !== 'UndetectableDelimiter')
      .map((error) => [error.row ?? 0, error.message]),
  )
  const rows: TableRow[] = []
  const broken: BrokenRow[] = []
  body.forEach((cells, i) => {
    const line = i + 2
    const message = unreadable.get(i + 1)
    if (cells.every((cell) => cell.trim() === '')) return
    if (message !== undefined) broken.push({ line, reason: 'A quote is not closed.' })
    else if (cells.length > columns.length)
      broken.push({ line, reason: `It has ${cells.length} cells under ${columns.length} columns.` })
    else
      rows.push({
        line,
        cells: Object.fromEntries(columns.map((column, at) => [column, (cells[at] ?? '').trim()])),
      })
  })
  return { columns, rows, broken }
}
