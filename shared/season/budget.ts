import type { LockerState } from '@shared/journal/locker-state'
import type { DueItem } from './due'
import { costNew } from './item'
import type { LockerContext } from './locker-lives'
import { cheapestAge, partCost, type PartCost } from './plan-cost'

/** One thing to do with what it costs, where that is known. */
interface BudgetEntry {
  readonly item: DueItem
  /** What the new part costs. */
  readonly price?: number
  /** What it spares besides, where its chance of failing can be told. */
  readonly cost?: PartCost
  /** Age at which changing it costs least over the years [months]. */
  readonly bestAgeMonths?: number
}

/** What to do first on a budget. */
export interface BudgetPlan {
  readonly first: readonly BudgetEntry[]
  readonly later: readonly BudgetEntry[]
  readonly spent: number
}

/**
 * Orders what is to be replaced by what it spares for the money, and fills a budget from the top.
 *
 * Release cord comes first, for a lost pot without it goes on fishing; then the most spared a unit of money. What
 * has no price cannot be weighed and comes last.
 *
 * @param due     the things to do
 * @param budget  money to spend, ≥ 0
 * @param state   the locker
 * @param context months ahead and figures
 * @returns what fits the budget, what does not, and the sum
 */
export function onBudget(
  due: readonly DueItem[],
  budget: number,
  state: LockerState,
  context: LockerContext,
): BudgetPlan {
  const weighed = due
    .filter((item) => item.action === 'replace')
    .map((item): BudgetEntry => {
      const price = item.report && costNew(item.report.part.part, state.prices)
      const cost = item.report && partCost(item.report, state, context)
      const bestAgeMonths = cost && cheapestAge(cost, context.sheet)
      return {
        item,
        ...(price === undefined ? {} : { price }),
        ...(cost ? { cost } : {}),
        ...(bestAgeMonths === undefined ? {} : { bestAgeMonths }),
      }
    })
    .sort((a, b) => (rank(a) === rank(b) ? 0 : rank(b) - rank(a)))
  const first: typeof weighed = []
  const later: typeof weighed = []
  let spent = 0
  for (const entry of weighed) {
    const weighable = entry.cost !== undefined || isCord(entry.item)
    if (weighable && entry.price !== undefined && spent + entry.price <= budget) {
      first.push(entry)
      spent += entry.price
    } else later.push(entry)
  }
  return { first, later, spent }
}

function rank({ item, cost }: BudgetEntry): number {
  if (isCord(item)) return Infinity
  return cost ? cost.spared / Math.max(cost.planned, 0.01) : -1
}

/** Cord has no chance of failure to weigh; it comes first all the same. */
function isCord({ report }: DueItem): boolean {
  return report?.part.part.kind === 'release-cord'
}
