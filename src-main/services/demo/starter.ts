import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'

/** A starting shape by its id. */
export function starter(id: string): Pot {
  const found = starterPots.find((pot) => pot.id === id)
  if (!found) throw new Error(`there is no starting shape ${id}`)
  return found
}
