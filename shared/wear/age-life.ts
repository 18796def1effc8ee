import { significant } from '@shared/units/display'
import type { WearAssumptions } from './assumptions'
import type { LifeContext, PartLife } from './judgement'
import { predictedSurvival, priorBelief, scaleRange, type LifeBelief } from './own-record'
import { perMonthOfUse, type PartUse } from './part-use'
import { usualLife } from './usual-life'
import { chanceSaid } from './wording'

/**
 * How a part stands that lasts a usual time or number of fills: bags, wraps, ties, floats, tags, hooks.
 *
 * The usual life is the scale of a Weibull spread, corrected by the user's own record of failures.
 *
 * @param part    age, hauls, inspections
 * @param context figures, the user's record, the months to last
 * @returns the judgement
 * @source usual lives of the sheet
 */
export function ageLife(part: PartUse, context: LifeContext): PartLife {
  const { sheet, decimalMark = '.' } = context
  const inspected = part.inspections.length > 0
  const last = part.inspections.at(-1)
  if (last?.grade === 4)
    return { decision: 'replace', reason: 'The last inspection found a reason to discard it.', inspected }
  const usual = usualLife(part, sheet)
  if (!usual) return { decision: 'watch', reason: 'No usual life is known for this part.', inspected }
  const belief = context.belief ?? usualBelief(part, sheet)
  const { ageMonths, hauls } = part.now
  const inFills = usual.unit === 'fills'
  const perMonth = inFills ? perMonthOfUse(hauls, ageMonths) : 1
  const age = inFills ? hauls : ageMonths
  const failureChance =
    1 - predictedSurvival(belief, age + perMonth * context.aheadMonths) / predictedSurvival(belief, age)
  const decision =
    failureChance > sheet.replaceChance.value
      ? 'replace'
      : failureChance >= sheet.watchChance.value
        ? 'watch'
        : 'fine'
  const whole = Math.round(age)
  const unit = inFills ? 'fill' : 'month'
  const so = `${whole} ${whole === 1 ? unit : `${unit}s`}${inFills ? '' : ' old'}`
  const basis = inspected ? '' : ' Never inspected.'
  return {
    decision,
    reason: `${so}; usual life ${significant(usual.low, decimalMark)} to ${significant(usual.high, decimalMark)} ${usual.unit}${learnedSaid(belief, usual.value, context)}. Chance that it fails within ${context.aheadMonths} months: ${chanceSaid(failureChance)}.${basis}`,
    ...(perMonth > 0 ? { remainingMonths: remainingOf(belief, age, perMonth) } : {}),
    failureChance,
    inspected,
  }
}

/** What the user's own failures made of the usual life. */
function learnedSaid(
  belief: LifeBelief,
  usual: number,
  { ownFailures = 0, decimalMark = '.' }: LifeContext,
): string {
  if (ownFailures === 0) return ''
  const two = (age: number) => significant(age, decimalMark, 2)
  const by = ownFailures === 1 ? 'the one' : `the ${ownFailures}`
  return `, about ${two(scaleRange(belief).mid)} instead of ${two(usual)} by ${by} of yours that failed`
}

/** Belief on a part's life before the user's own record; undefined where no usual life is kept. */
export function usualBelief(part: Pick<PartUse, 'kind' | 'material'>, sheet: WearAssumptions): LifeBelief {
  const usual = usualLife(part, sheet)
  return priorBelief(sheet.lifeShape.value, usual?.value ?? sheet.ropeLife.value, sheet.priorFailures.value)
}

/** Further life at which nine tenths, half and a tenth of parts as old as this are still good. */
function remainingOf(
  belief: LifeBelief,
  age: number,
  perMonth: number,
): { low: number; mid: number; high: number } {
  const { shape, failures, exposure } = belief
  // From R(t + x)/R(t) = p with R(t) = (b/(b + t^β))^a.
  const until = (share: number) =>
    (((exposure + age ** shape) * share ** (-1 / failures) - exposure) ** (1 / shape) - age) / perMonth
  return { low: until(0.9), mid: until(0.5), high: until(0.1) }
}
