import { group } from 'd3-array'
import type { DueAction, DueItem } from '@shared/season/due'
import { partKindWords } from '@renderer/gear/gear-words'

/** Things of one sort to do on several pots. */
export interface DueGroup {
  readonly key: string
  readonly action: DueAction
  /** The part in a word, as "release cord"; empty where it is about whole pots. */
  readonly part: string
  /** Day of the first. */
  readonly by: string
  readonly items: readonly DueItem[]
}

const first: Record<DueAction, number> = { replace: 0, clean: 1, inspect: 2 }

/** A long list in a few lines: what to do, on which pots; soonest first. */
export function dueGroups(due: readonly DueItem[]): DueGroup[] {
  const groups = group(due, ({ action, report }) => `${action} ${report?.part.part.kind ?? ''}`)
  return [...groups]
    .flatMap(([key, items]): DueGroup[] => {
      const [head] = items
      if (!head) return []
      const part = head.report ? partKindWords[head.report.part.part.kind].toLowerCase() : ''
      return [{ key, action: head.action, part, by: head.by, items }]
    })
    .sort(
      (a, b) =>
        a.by.localeCompare(b.by) || first[a.action] - first[b.action] || b.items.length - a.items.length,
    )
}
