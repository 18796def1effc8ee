/** How sure a figure is: read where it was published, recalled, worked out, or taken without a measurement. */
export type AssumptionStanding = 'read' | 'memory' | 'derived' | 'assumed' | 'user'

/** One adjustable figure of a model, with its spread and where it comes from. */
export interface Assumption {
  readonly value: number
  readonly low: number
  readonly high: number
  readonly unit: string
  readonly source: string
  readonly standing: AssumptionStanding
  readonly label: string
}

export type AssumptionSheet<K extends string = string> = Readonly<Record<K, Assumption>>

/**
 * Replaces values of a sheet by the user's own; a value outside its range widens the range to hold it.
 *
 * @param sheet     the figures as shipped
 * @param overrides the user's figures by key; unknown keys are left out
 * @returns a new sheet, the changed rows marked as the user's
 */
export function withOverrides<K extends string>(
  sheet: AssumptionSheet<K>,
  overrides: Readonly<Record<string, number>>,
): AssumptionSheet<K> {
  const rows = Object.entries<Assumption>(sheet).map(([key, row]): [string, Assumption] => {
    const value = overrides[key]
    if (value === undefined || !Number.isFinite(value)) return [key, row]
    const low = Math.min(row.low, value)
    const high = Math.max(row.high, value)
    return [
      key,
      {
        ...row,
        value,
        low,
        high,
        standing: 'user',
        source: `Set by the user; shipped as ${row.value}. ${row.source}`,
      },
    ]
  })
  return Object.fromEntries(rows) as AssumptionSheet<K>
}
