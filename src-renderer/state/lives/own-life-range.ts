import type { PartState } from '@shared/journal/locker-state'
import { likeness, ownBelief, type OwnLives } from '@shared/season/own-lives'
import { usualBelief } from '@shared/wear/age-life'
import type { WearAssumptions } from '@shared/wear/assumptions'
import { scaleRange } from '@shared/wear/own-record'

type Range = ReturnType<typeof scaleRange>

/** The life of a likeness as usually taken, and as believed after the user's own record. */
export interface LifeRange {
  readonly usual: Range
  readonly believed: Range
}

/** What was learned of each likeness; the range is where four fifths of the belief lies. */
export function learnedLives(
  lives: ReadonlyMap<string, OwnLives>,
  parts: readonly PartState[],
  sheet: WearAssumptions,
): (OwnLives & LifeRange & { likeness: string })[] {
  const sample = new Map(parts.map((part) => [likeness(part), part]))
  return [...lives].flatMap(([name, own]) => {
    const part = sample.get(name)
    return part
      ? [
          {
            ...own,
            likeness: name,
            usual: scaleRange(usualBelief(part.part, sheet)),
            believed: scaleRange(ownBelief(part, own.record, sheet)),
          },
        ]
      : []
  })
}
