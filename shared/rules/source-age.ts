import { firstDay } from '@shared/schema/rule-fields'
import type { RulePack, RuleSource } from '@shared/schema/rule-pack'
import { isOlderThanAYear } from './coverage'

/** How old the copies are that a pack was read from. */
export interface SourceAge {
  /** The day of the youngest dated copy, as its page says it. */
  readonly newest?: string
  /** Copies that carry no date. */
  readonly undated: number
  /** The pack was last held against its sources, or its youngest copy was made, more than a year ago. */
  readonly isOld: boolean
}

/**
 * Age of a region's sources. A copy whose date is words counts as undated; one known to the year counts from its
 * first day.
 *
 * @param pack  the region's rules
 * @param today date or time stamp, `2026-12-05`
 */
export function sourceAge(pack: RulePack, today: string): SourceAge {
  const dates = pack.sources.flatMap((source) => copyDate(source) ?? [])
  const newest = dates.toSorted().at(-1)
  return {
    ...(newest === undefined ? {} : { newest }),
    undated: pack.sources.length - dates.length,
    isOld: isOlderThanAYear(pack, today) || (newest !== undefined && isYearOld(newest, today)),
  }
}

/** Whether one copy is known to be more than a year old. */
export function isOldSource(source: RuleSource, today: string): boolean {
  const date = copyDate(source)
  return date !== undefined && isYearOld(date, today)
}

/** The date at the start of what a page says of its copy; nothing where it starts with words. */
function copyDate({ date }: RuleSource): string | undefined {
  const [found] = /^\d{4}(-\d{2}(-\d{2})?)?(?!\d)/.exec(date ?? '') ?? []
  return found
}

const daysInYear = 365
const isYearOld = (date: string, today: string) =>
  (Date.parse(today.slice(0, 10)) - Date.parse(firstDay(date))) / 86_400_000 > daysInYear
