import type { NotFound, Rule, RulePack } from '@shared/schema/rule-pack'

/** What a pack does with each fact it carries: checked by the engine, shown for a person to read, or not found. */
export interface Coverage {
  readonly checked: readonly Rule[]
  readonly shown: readonly Rule[]
  readonly unknown: readonly NotFound[]
  /** Of the rules: recalled and not read, and those on which sources disagree. */
  readonly fromMemory: number
  readonly conflicting: number
}

export function coverage(pack: RulePack): Coverage {
  return {
    checked: pack.rules.filter((rule) => rule.shown === undefined),
    shown: pack.rules.filter((rule) => rule.shown !== undefined),
    unknown: pack.notFound,
    fromMemory: pack.rules.filter((rule) => rule.confidence === 'memory').length,
    conflicting: pack.rules.filter((rule) => rule.confidence === 'conflicting').length,
  }
}

const daysInYear = 365

/**
 * Whether a pack was last held against its sources more than a year before a day.
 *
 * @param pack  the pack
 * @param today date or time stamp, `2026-12-05`
 */
export function isOlderThanAYear(pack: RulePack, today: string): boolean {
  const days = (Date.parse(today.slice(0, 10)) - Date.parse(pack.checkedOn)) / 86_400_000
  return days > daysInYear
}
