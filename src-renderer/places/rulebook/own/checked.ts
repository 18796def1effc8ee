import type { Rule, RulePack, RuleSource } from '@shared/schema/rule-pack'
import type { Species } from '@shared/schema/rule-species'
import { today } from '@renderer/state/today'

/** When and where the reader read a rule or what may be kept, as the form holds it. */
export interface Checked {
  readonly date: string
  readonly note: string
  readonly title: string
  readonly url: string
}

/** What the form says of a rule's origin, as it stands in the pack; today and nothing else for a new one. */
export function checkedOf(rule: Rule | Species | undefined, pack: RulePack): Checked {
  const source = rule?.user && pack.sources[rule.sources[0] ?? 0]
  const named = source && source.kind !== 'secondary' ? source : undefined
  return {
    date: rule?.user?.date ?? today(),
    note: rule?.user?.note ?? '',
    title: named?.title ?? '',
    url: named?.url ?? '',
  }
}

/** What marks the entry as the reader's, and what it stands in place of. */
export function markOf({ date, note }: Checked, replaces?: string): NonNullable<Rule['user']> {
  return {
    date,
    ...(note.trim() === '' ? {} : { note: note.trim() }),
    ...(replaces === undefined ? {} : { replaces }),
  }
}

/** Where the reader has it from; nothing where it is their own note. */
export function sourceOf({ title, url, date }: Checked): RuleSource | undefined {
  if (title.trim() === '') return undefined
  return {
    title: title.trim(),
    kind: 'notice',
    date,
    ...(url.trim() === '' ? {} : { url: url.trim() }),
  }
}
