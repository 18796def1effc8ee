import type { PotState } from './locker-state'
import type { Odometer } from './odometer'

export const dayMs = 86_400_000

/** A pot ashore for this long dries out, and what grew on it dies. */
const dryingDays = 2

/** Counts the days since a pot last changed place, and starts counting from a new time. */
export function passTime(pot: PotState, untilMs: number): void {
  const days = Math.max(0, untilMs - pot.sinceMs) / dayMs
  addDays(pot.been, pot, days)
  pot.wetDays = wetDaysAt(pot, untilMs)
  pot.sinceMs = Math.max(pot.sinceMs, untilMs)
}

/** A lost pot lies in the water until it is found. */
export function isWet(pot: PotState): boolean {
  return pot.status === 'in-water' || pot.status === 'lost'
}

/** Adds days to a count, where the pot is now. */
export function addDays(reading: Odometer, pot: PotState, days: number): void {
  if (isWet(pot)) reading.immersedDays += days
  else if (pot.status === 'ashore') reading.ashoreDays[pot.storage] += days
}

/** Days a pot has been wet without drying out, to a time. */
export function wetDaysAt(pot: PotState, nowMs: number): number {
  const days = Math.max(0, nowMs - pot.sinceMs) / dayMs
  if (isWet(pot)) return pot.wetDays + days
  return days >= dryingDays ? 0 : pot.wetDays
}
