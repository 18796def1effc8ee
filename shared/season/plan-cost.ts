import type { LockerState } from '@shared/journal/locker-state'
import type { WearAssumptions } from '@shared/wear/assumptions'
import { bestReplacementAge } from '@shared/wear/replacement-age'
import { predictedSurvival, scaleRange } from '@shared/wear/own-record'
import { usualLife } from '@shared/wear/usual-life'
import { costNew } from './item'
import type { LockerContext, PartReport } from './locker-lives'

/** What one part costs to change in time, and what its failure is expected to cost in the months ahead. */
export interface PartCost {
  readonly report: PartReport
  readonly planned: number
  /** Money lost if it fails: the part, and for a rope the pot with it. */
  readonly failure: number
  readonly chanceKept: number
  readonly chanceNew: number
  /** Expected money that changing it now spares. */
  readonly spared: number
}

/**
 * Costs of a part, from the list of prices or what was paid; undefined where neither is known or nothing can be
 * said of its chance to fail.
 *
 * @param report  the part and how it stands
 * @param state   pots, parts and prices
 * @param context months ahead and figures
 */
export function partCost(
  report: PartReport,
  state: LockerState,
  context: LockerContext,
): PartCost | undefined {
  const { part, pot, life, belief } = report
  const planned = costNew(part.part, state.prices)
  const chanceKept = life.failureChance
  if (planned === undefined || chanceKept === undefined) return undefined
  const failure = part.part.kind === 'rope' ? potCost(pot.parts, state) : planned
  const inMonths = usualLife(part.part, context.sheet)?.unit === 'months'
  const chanceNew = inMonths ? 1 - predictedSurvival(belief, context.aheadMonths) : 0
  return {
    ...{ report, planned, failure, chanceKept, chanceNew },
    spared: Math.max(0, chanceKept - chanceNew) * failure,
  }
}

/**
 * Age at which changing a part costs least over the years [months]; undefined where it is counted in fills or is
 * best changed on failure.
 */
export function cheapestAge(
  { report, planned, failure }: PartCost,
  sheet: WearAssumptions,
): number | undefined {
  const { part, belief } = report
  if (usualLife(part.part, sheet)?.unit !== 'months') return undefined
  return bestReplacementAge({ shape: belief.shape, scale: scaleRange(belief).mid }, { planned, failure })
}

/** What a whole pot costs new, as far as its parts have a price. */
function potCost(parts: readonly string[], state: LockerState): number {
  return parts.reduce((sum, id) => {
    const part = state.parts[id]
    return sum + (part ? (costNew(part.part, state.prices) ?? 0) : 0)
  }, 0)
}

/** The plan's money beside that of changing parts only when they fail. */
export interface PlanCost {
  /** The parts due at their price new, whether they are bought or lie in stock: stock used up was paid for too. */
  readonly newParts: number
  /** Expected cost of failures in the months ahead with the plan, and without it. */
  readonly failuresWithPlan: number
  readonly failuresWithout: number
  /** Parts due whose price is not known; they are in no sum. */
  readonly unknown: number
}

/**
 * Expected money of a plan against changing on failure, over the months ahead.
 *
 * with = Σ planned + Σ chance new·failure (changed) + Σ chance kept·failure (rest); without = Σ chance kept·failure
 *
 * @param changed parts that the plan changes now
 * @param reports every part
 * @param state   the locker
 * @param context months ahead and figures
 * @returns sums; estimates with the spread of the chances behind them
 */
export function planCost(
  changed: readonly PartReport[],
  reports: readonly PartReport[],
  state: LockerState,
  context: LockerContext,
): PlanCost {
  const now = new Set(changed.map((report) => report.part))
  let [newParts, failuresWithPlan, failuresWithout, unknown] = [0, 0, 0, 0]
  for (const report of reports) {
    const cost = partCost(report, state, context)
    const isChanged = now.has(report.part)
    if (!cost) {
      const price = costNew(report.part.part, state.prices)
      if (isChanged && price === undefined) unknown += 1
      if (isChanged) newParts += price ?? 0
      continue
    }
    failuresWithout += cost.chanceKept * cost.failure
    failuresWithPlan += (isChanged ? cost.chanceNew : cost.chanceKept) * cost.failure
    if (isChanged) newParts += cost.planned
  }
  return { newParts, failuresWithPlan, failuresWithout, unknown }
}
