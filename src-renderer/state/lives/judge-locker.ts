import { withOverrides } from '@shared/schema/assumption'
import { onBudget } from '@shared/season/budget'
import { dueList } from '@shared/season/due'
import { lockerLives } from '@shared/season/locker-lives'
import { ownLives } from '@shared/season/own-lives'
import { planCost } from '@shared/season/plan-cost'
import { shoppingList } from '@shared/season/shopping'
import { wearAssumptions } from '@shared/wear/assumptions'
import type { LivesAnswer, LivesQuestion } from './lives-question'
import { learnedLives } from './own-life-range'

/** Everything that the three places of the gear show of one locker, judged together. */
export function judgeLocker({ state, context: given, overrides, budget }: LivesQuestion): LivesAnswer {
  const context = { ...given, sheet: withOverrides(wearAssumptions, overrides) }
  const reports = lockerLives(state, context)
  const due = dueList(state, reports, context)
  const changed = due.flatMap(({ action, report }) => (action === 'replace' && report ? [report] : []))
  const parts = Object.values(state.parts)
  return {
    nowMs: context.nowMs,
    reports,
    due,
    shopping: shoppingList(due, state),
    plan: planCost(changed, reports, state, context),
    budget: budget === undefined ? undefined : onBudget(due, budget, state, context),
    learned: learnedLives(ownLives(state, context.sheet, context.nowMs), parts, context.sheet),
  }
}
