/** Which column of a file holds what; what is not named is not in the file. */
export type ColumnMatch<F extends string> = Partial<Record<F, string>>

/**
 * Guesses which column holds what, by the words people use. Each column is used once; the user may change it.
 *
 * @param columns names in the file
 * @param words   for each field the words that mean it, best first
 * @returns a column by field
 */
export function matchColumns<F extends string>(
  columns: readonly string[],
  words: Readonly<Record<F, readonly string[]>>,
): ColumnMatch<F> {
  const free = new Set(columns)
  const match: ColumnMatch<F> = {}
  // Exact names first, so that "float" does not take the column of "float number".
  for (const same of [(a: string, b: string) => a === b, (a: string, b: string) => a.includes(b)])
    for (const [field, meanings] of Object.entries<readonly string[]>(words) as [F, readonly string[]][]) {
      if (match[field] !== undefined) continue
      const found = meanings
        .map((word) => [...free].find((column) => same(plain(column), word)))
        .find((column) => column !== undefined)
      if (found === undefined) continue
      match[field] = found
      free.delete(found)
    }
  return match
}

function plain(column: string): string {
  return column
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, ' ')
    .trim()
}
