import type { LockerState } from '@shared/journal/locker-state'
import type { BudgetPlan } from '@shared/season/budget'
import type { DueItem } from '@shared/season/due'
import type { LockerContext, PartReport } from '@shared/season/locker-lives'
import type { OwnLives } from '@shared/season/own-lives'
import type { PlanCost } from '@shared/season/plan-cost'
import type { ShoppingList } from '@shared/season/shopping'
import type { LifeRange } from './own-life-range'

/** A locker and what its judgement depends on. */
export interface LivesQuestion {
  readonly state: LockerState
  readonly context: Omit<LockerContext, 'sheet'>
  /** The user's own figures by key. */
  readonly overrides: Readonly<Record<string, number>>
  readonly budget?: number | undefined
}

/** How every part stands, what is due, what it costs, and what was learned from parts that failed. */
export interface LivesAnswer {
  /** The time it was judged at, which tells answers apart. */
  readonly nowMs: number
  readonly reports: readonly PartReport[]
  readonly due: readonly DueItem[]
  readonly shopping: ShoppingList
  readonly plan: PlanCost
  readonly budget: BudgetPlan | undefined
  readonly learned: readonly (OwnLives & LifeRange & { readonly likeness: string })[]
}

export const noLives: LivesAnswer = {
  nowMs: 0,
  reports: [],
  due: [],
  shopping: { lines: [], total: 0, unpriced: 0 },
  plan: { newParts: 0, failuresWithPlan: 0, failuresWithout: 0, unknown: 0 },
  budget: undefined,
  learned: [],
}
