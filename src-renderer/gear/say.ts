import type { InstalledPart } from '@shared/schema/gear'
import type { PartReport } from '@shared/season/locker-lives'
import type { Decision } from '@shared/wear/judgement'
import { reader } from '@renderer/ui/reader.svelte'

/** The day of a moment, by the clock here, as people here write it; a calendar day is for `sayCalendarDay`. */
export const sayDay = (at: string | number) =>
  new Date(at).toLocaleDateString(undefined, { day: 'numeric', month: 'short', year: 'numeric' })

/** A moment as people here write it. */
export const sayMoment = (at: string | number) =>
  new Date(at).toLocaleString(undefined, { dateStyle: 'medium', timeStyle: 'short' })

export const sayClock = (at: string | number) =>
  new Date(at).toLocaleTimeString(undefined, { hour: 'numeric', minute: '2-digit' })

/** Money without a currency: it is the user's own. */
export const sayMoney = (amount: number) =>
  amount.toLocaleString(undefined, { minimumFractionDigits: 2, maximumFractionDigits: 2 })

const sayWhole = (value: number) => value.toLocaleString(undefined, { maximumFractionDigits: 0 })

/** Months in the words of a season: weeks are too fine and decades too long to be told apart. */
export function sayMonths(months: number): string {
  if (months >= 120) return 'over 10 years'
  if (months >= 23.5) return `${sayWhole(months / 12)} years`
  if (months < 1) return 'under a month'
  return months < 1.5 ? '1 month' : `${sayWhole(months)} months`
}

/** Median and 80 % range of the life that remains. */
export function sayRemaining({ life }: Pick<PartReport, 'life'>): string | undefined {
  const remaining = life.remainingMonths
  if (!remaining) return undefined
  const [low, mid, high] = [remaining.low, remaining.mid, remaining.high].map(sayMonths)
  return low === high ? mid : `${mid} (${low} to ${high})`
}

/** Material and size of a part as it was put in. */
export function sayInstalled(part: Omit<InstalledPart, 'id'>): string {
  return [
    part.material?.replace(/-/g, ' '),
    part.diameterMm === undefined ? undefined : reader.say(part.diameterMm, 'mm'),
    part.lengthM === undefined ? undefined : reader.say(part.lengthM, 'm'),
    part.barLengthMm === undefined ? undefined : `${reader.say(part.barLengthMm, 'mm')} bar`,
    part.count === undefined ? undefined : part.count === 1 ? '1 piece' : `${part.count} pieces`,
  ]
    .filter((word) => word !== undefined)
    .join(', ')
}

const order: Record<Decision, number> = { replace: 2, watch: 1, fine: 0 }

/** Whichever decision asks for more. */
export function worstDecision(reports: readonly PartReport[]): Decision | undefined {
  return reports
    .map(({ life }) => life.decision)
    .reduce<Decision | undefined>(
      (worst, next) => (worst && order[worst] >= order[next] ? worst : next),
      undefined,
    )
}

/** Worst first, then by how soon they wear out. */
export function byNeed(a: PartReport, b: PartReport): number {
  const soon = ({ life }: PartReport) => life.remainingMonths?.mid ?? Infinity
  return order[b.life.decision] - order[a.life.decision] || (soon(a) === soon(b) ? 0 : soon(a) - soon(b))
}
