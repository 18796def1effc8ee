import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'
import { ulid } from 'ulid'

export const freshId = () => ulid()

/** A design of the reader's own, made from a starting shape or from another design. */
export function freshPot(from: Pot, name = from.name): Pot {
  return { ...from, id: freshId(), name }
}

/** What lies on the bench of a newcomer. */
export function firstPot(): Pot {
  const standard = starterPots[1] ?? starterPots[0]
  if (!standard) throw new Error('there is no starting shape')
  return freshPot(standard)
}
