import type { Season } from '@main/services/season-tables'
import type { JournalProblem } from '@shared/journal/locker-state'
import type { BudgetPlan } from '@shared/season/budget'
import type { DueItem } from '@shared/season/due'
import type { PlanCost } from '@shared/season/plan-cost'
import type { ShoppingList } from '@shared/season/shopping'
import { monthsSaid } from '@shared/wear/wording'

export interface DueFound {
  readonly on: string
  readonly season: Season
  readonly shopping: ShoppingList
  readonly cost: PlanCost
  readonly plan?: BudgetPlan
  /** Numbers of floats passed by and not accounted for. */
  readonly missing: readonly string[]
  readonly problems: readonly JournalProblem[]
}

const three = (value: number) => String(Number(value.toPrecision(3)))

/** What is due, for a person. */
export function dueText(found: DueFound): string {
  const { season, shopping, cost, plan, missing, problems } = found
  const lines = [
    ...(missing.length > 0 ? [`Passed by and still out: ${missing.join(', ')}.`, ''] : []),
    season.due.length === 0 ? `Nothing is due on ${found.on}.` : `Due, from ${found.on}:`,
    ...season.due.map(dueLine),
  ]
  if (shopping.lines.length > 0)
    lines.push('', 'To buy:', ...shopping.lines.map(shoppingLine), totalLine(shopping))
  if (season.due.some((item) => item.action === 'replace')) lines.push('', costLine(cost))
  if (plan)
    lines.push(
      '',
      `On this budget first (${three(plan.spent)} in all):`,
      ...plan.first.map(({ item }) => dueLine(item)),
    )
  if (problems.length > 0)
    lines.push(
      '',
      'In the history:',
      ...problems.map((problem) => `  ${problem.at.slice(0, 10)}  ${problem.what}`),
    )
  return `${lines.join('\n')}\n`
}

function dueLine({ by, action, number, report, reason }: DueItem): string {
  const part = report ? report.part.part.kind.replace('-', ' ') : 'pot'
  const left = report?.life.remainingMonths ? ` Life left: ${monthsSaid(report.life.remainingMonths)}.` : ''
  return `  ${by}  ${action.padEnd(7)}  pot ${number}, ${part}: ${reason}${left}`
}

function shoppingLine({
  item,
  unit,
  needed,
  inHand,
  toBuy,
  coils,
  cost,
}: ShoppingList['lines'][number]): string {
  const amount =
    coils === undefined
      ? `${three(toBuy)} ${unit}`
      : `${three(toBuy)} ${unit}, ${coils} coil${coils === 1 ? '' : 's'}`
  const hand = inHand > 0 ? ` (needs ${three(needed)}, in hand ${three(inHand)})` : ''
  return `  ${item}: ${amount}${hand}${cost === undefined ? ', no price' : `, ${cost.toFixed(2)}`}`
}

function totalLine({ total, unpriced }: ShoppingList): string {
  return `  Total ${total.toFixed(2)}${unpriced > 0 ? `, without ${unpriced} that ${unpriced === 1 ? 'has' : 'have'} no price` : ''}`
}

function costLine({ newParts, failuresWithPlan, failuresWithout }: PlanCost): string {
  return `The plan’s new parts are worth ${three(newParts)}, in hand or not, and it leaves failures worth about ${three(failuresWithPlan)}; doing nothing leaves about ${three(failuresWithout)}.`
}

/** What is due, for a program. */
export function dueJson({ on, season, shopping, cost, plan, missing, problems }: DueFound) {
  return {
    format: 'potwright/due',
    version: 1,
    on,
    due: season.due.map(dueEntry),
    shopping,
    cost,
    ...(plan ? { budget: { spent: plan.spent, first: plan.first.map(({ item }) => dueEntry(item)) } } : {}),
    missing,
    problems,
  }
}

function dueEntry({ by, action, pot, number, report, reason }: DueItem) {
  const { part, life } = report ?? {}
  return {
    ...{ by, action, pot, number, reason },
    ...(part && life
      ? {
          part: part.part.id,
          kind: part.part.kind,
          decision: life.decision,
          remainingMonths: life.remainingMonths,
          strengthLeft: life.strengthLeft,
        }
      : {}),
  }
}
