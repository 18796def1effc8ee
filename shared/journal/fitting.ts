import type { PartState, PotState } from './locker-state'
import { beenThrough } from './exposure'
import { copyOf } from './odometer'

/** Puts a part on a pot: what the pot goes through from now on counts for the part too. */
export function putOn(part: PartState, pot: PotState): void {
  part.pot = pot.id
  part.status = 'fitted'
  part.pot0 = copyOf(pot.been)
  pot.parts.push(part.part.id)
}

/** Takes a part off its pot; it keeps what it has been through. */
export function takeOff(part: PartState, pot: PotState, status: 'retired' | 'failed', at: string): void {
  part.carried = beenThrough(part, pot)
  part.status = status
  part.removedAt = at
  if (pot.status !== 'retired') pot.parts = pot.parts.filter((id) => id !== part.part.id)
}

/** Moves a part from one pot to another. */
export function moveOver(part: PartState, from: PotState, to: PotState): void {
  part.carried = beenThrough(part, from)
  from.parts = from.parts.filter((id) => id !== part.part.id)
  putOn(part, to)
}
