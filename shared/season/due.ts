import type { LockerState, PotState } from '@shared/journal/locker-state'
import { dayMs, wetDaysAt } from '@shared/journal/passage'
import { compareNumbers } from '@shared/journal/run'
import { cleanAt, foulingFactor } from '@shared/wear/fouling'
import type { LockerContext, PartReport } from './locker-lives'

export type DueAction = 'replace' | 'inspect' | 'clean'

/** One thing to do. */
export interface DueItem {
  readonly action: DueAction
  readonly pot: string
  readonly number: string
  /** The part, where it is about one. */
  readonly report?: PartReport
  /** Day by which, as `2026-12-05`. */
  readonly by: string
  readonly reason: string
}

const monthMs = (365.25 / 12) * dayMs
/** Parts whose look says more than their age are looked at once a season. */
const looked = new Set(['rope', 'netting', 'frame', 'release-cord', 'bait-basket'])
const inspectionMonths = 12

/**
 * What to replace, inspect and clean, and by when.
 *
 * Worn parts come due now; parts to watch by the time that one in ten would be worn; the rest once a season.
 *
 * @param state   the locker
 * @param reports how its parts stand
 * @param context the time and the months ahead
 * @returns things to do, soonest first, then by number
 */
export function dueList(
  state: LockerState,
  reports: readonly PartReport[],
  context: LockerContext,
): DueItem[] {
  const parts = reports.flatMap((report) => partDue(report, context))
  const pots = Object.values(state.pots).flatMap((pot) => potDue(pot, context))
  return [...parts, ...pots].sort(
    (a, b) =>
      a.by.localeCompare(b.by) || compareNumbers(a.number, b.number) || a.action.localeCompare(b.action),
  )
}

function partDue(report: PartReport, { nowMs, aheadMonths }: LockerContext): DueItem[] {
  const { part, pot, life } = report
  const common = { pot: pot.id, number: pot.number, report }
  if (life.decision === 'replace')
    return [{ ...common, action: 'replace', by: day(nowMs), reason: life.reason }]
  const sinceLook = monthsSince(part.inspections.at(-1)?.on ?? part.part.installedOn, nowMs)
  const lookIn = looked.has(part.part.kind) ? inspectionMonths - sinceLook : Infinity
  const wornIn = life.decision === 'watch' ? (life.remainingMonths?.low ?? 0) : Infinity
  const inMonths = Math.max(0, Math.min(lookIn, wornIn))
  if (inMonths > aheadMonths) return []
  const reason = wornIn <= lookIn ? life.reason : lookReason(part.inspections.length > 0)
  return [{ ...common, action: 'inspect', by: day(nowMs + inMonths * monthMs), reason }]
}

const lookReason = (before: boolean) =>
  before ? 'A year since it was last looked at.' : 'Not inspected yet.'

function potDue(pot: PotState, { nowMs, around }: LockerContext): DueItem[] {
  if (pot.status !== 'in-water') return []
  const wetDays = wetDaysAt(pot, nowMs)
  const temperatureC =
    pot.temperatureC ?? (pot.water === undefined ? undefined : around?.waters[pot.water]?.temperatureC)
  const factor = foulingFactor(wetDays, 'wire', temperatureC)
  if (wetDays < cleanAt.wetDays && factor < cleanAt.multiplier) return []
  const reason = `${Math.round(wetDays)} days in the water without drying: growth adds drag. Dry it out for two days.`
  return [{ action: 'clean', pot: pot.id, number: pot.number, by: day(nowMs), reason }]
}

function monthsSince(when: string, nowMs: number): number {
  return Math.max(0, nowMs - Date.parse(when)) / monthMs
}

function day(ms: number): string {
  return new Date(ms).toISOString().slice(0, 10)
}
