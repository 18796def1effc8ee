import type { Exposure, PartUse } from '@shared/wear/part-use'
import type { PartState, PotState } from './locker-state'
import { copyOf, readFrom, type Odometer } from './odometer'
import { addDays, dayMs } from './passage'

const monthMs = (365.25 / 12) * dayMs

/** Months from the day a part was put in to a time, never below 0. */
function ageMonths(part: PartState, atMs: number): number {
  return Math.max(0, atMs - Date.parse(part.part.installedOn)) / monthMs
}

/** What a part has been through up to the last change of place of its pot. */
export function beenThrough(part: PartState, pot: PotState): Odometer {
  return part.status === 'fitted' ? readFrom(part.carried, part.pot0, pot.been) : copyOf(part.carried)
}

/** What a part has been through at a time, the days since its pot last changed place included. */
export function exposureAt(part: PartState, pot: PotState, atMs: number): Exposure {
  const reading = beenThrough(part, pot)
  if (part.status === 'fitted') addDays(reading, pot, Math.max(0, atMs - pot.sinceMs) / dayMs)
  const untilMs = part.removedAt === undefined ? atMs : Math.min(atMs, Date.parse(part.removedAt))
  return { ageMonths: ageMonths(part, untilMs), ...reading }
}

/**
 * A part as the wear models see it at a time.
 *
 * @param part  the part
 * @param pot   the pot it is on
 * @param nowMs the time [ms since 1970]
 * @returns kind, size, what it has been through and its inspections
 */
export function partUseAt(part: PartState, pot: PotState, nowMs: number): PartUse {
  const { kind, material, diameterMm, zincUm } = part.part
  return {
    kind,
    material,
    diameterMm,
    zincUm,
    now: exposureAt(part, pot, nowMs),
    inspections: part.inspections,
  }
}
