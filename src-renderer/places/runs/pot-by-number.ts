import type { PotState } from '@shared/journal/locker-state'
import { locker } from '@renderer/state/locker.svelte'

/** The pot in use with a number; one that was given up only where no other carries it. */
export function potByNumber(number: string): PotState | undefined {
  const wanted = number.trim().toLowerCase()
  const same = locker.pots.filter((pot) => pot.status !== 'retired' && pot.number.toLowerCase() === wanted)
  return same.find((pot) => pot.status !== 'lost') ?? same[0]
}
