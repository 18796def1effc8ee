import type { LifeContext, PartLife } from './judgement'
import { perMonthOfUse, type PartUse } from './part-use'
import { rotHalfLife, rotRateAt } from './release-cord'

/** A season's length: a cord is renewed each season whatever its days in the water [months]. */
const seasonMonths = 12

/**
 * How a release cord stands: renewed at half strength by days in the water and temperature, or each season.
 *
 * @param part    days in the water and age
 * @param context figures, the water's temperature
 * @returns the judgement; never a date of release
 * @source cotton cord, Winger and others 2015; the rise with temperature is an assumption
 */
export function cordLife(part: PartUse, context: LifeContext): PartLife {
  const { sheet } = context
  const waterC = context.waterC ?? sheet.waterC.value
  const discarded = part.inspections.at(-1)?.grade === 4
  const common = { inspected: part.inspections.length > 0 }
  if (discarded)
    return { ...common, decision: 'replace', reason: 'The last inspection found a reason to discard it.' }
  const halfDays = (ratePerDay: number, q10: number) =>
    rotHalfLife(rotRateAt(ratePerDay, sheet.rotReferenceC.value, waterC, q10))
  const life = {
    low: halfDays(sheet.rotPerDay.high, sheet.rotQ10.value),
    mid: halfDays(sheet.rotPerDay.value, sheet.rotQ10.value),
    high: halfDays(sheet.rotPerDay.low, sheet.rotQ10.value),
  }
  const { immersedDays, ageMonths } = part.now
  const perMonth = perMonthOfUse(immersedDays, ageMonths)
  const left = (days: number) => {
    const byRot = perMonth > 0 ? Math.max(0, days - immersedDays) / perMonth : Infinity
    return Math.min(byRot, Math.max(0, seasonMonths - ageMonths))
  }
  const remaining = { low: left(life.low), mid: left(life.mid), high: left(life.high) }
  const days = Math.round(immersedDays)
  if (ageMonths >= seasonMonths)
    return {
      ...common,
      decision: 'replace',
      reason: 'A season old: release cord is renewed each season.',
      remainingMonths: remaining,
    }
  const half = Math.round(life.mid)
  const reason = `${days} days in the water; about half strength at ${half} days.`
  const decision = immersedDays >= life.mid ? 'replace' : immersedDays >= life.low ? 'watch' : 'fine'
  return { ...common, decision, reason, remainingMonths: remaining }
}
