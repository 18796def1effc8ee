import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'

/** A starting shape by its id. */
export function starter(id: string): Pot {
  const found = starterPots.find((pot) => pot.id === id)
  if (!found) throw new Error(`there is no starting shape ${id}`)
  return found
}

/** The same pot on a base ring of another bar [mm]. */
export const onBaseRing = (pot: Pot, barDiameterMm: number): Pot => ({
  ...pot,
  frame: (pot.frame ?? []).map((member) =>
    member.role === 'base-ring' ? { ...member, barDiameterMm } : member,
  ),
})
