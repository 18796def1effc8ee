/** A list with one row changed, taken out or added; lists in a design are never changed in place. */
export const withRow = <T>(list: readonly T[], index: number, row: T): T[] =>
  list.map((old, at) => (at === index ? row : old))

export const withoutRow = <T>(list: readonly T[], index: number): T[] => list.filter((_, at) => at !== index)
