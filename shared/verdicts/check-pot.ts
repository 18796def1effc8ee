import { worstState, type Check, type Verdict } from '@shared/schema/check'
import type { CheckInput } from './check-input'
import { floatShows } from './float-shows'
import { holdsBottom } from './holds-bottom'
import { cannotTell, verdictOf } from './judging'
import { landingOf } from './landing'
import { lifts } from './lifts'
import { prepare } from './prepared'
import { stows } from './stows'

export type { CheckInput } from './check-input'

/**
 * The six verdicts on a pot, in the form of `potwright/check`.
 *
 * Four are computed here with the three sets of coefficients; the legal one and how it fishes are judged elsewhere
 * and passed in. What is not known makes its verdict "cannot tell", never "holds".
 *
 * @param input design, materials, coefficients, and what is known of water, trip, rules and wear
 * @returns verdicts with findings in a fixed order, and figures in SI; `low`, `mid`, `high` are the cautious, middle
 *   and hopeful coefficients
 */
export function checkPot(input: CheckInput): Check {
  const prepared = prepare(input)
  const landing = landingOf(prepared)
  const verdicts = {
    legal: input.legal ?? notJudged('legal:region', 'whether it is legal', 'the region'),
    holdsBottom: holdsBottom(prepared, landing),
    floatShows: floatShows(prepared),
    lifts: lifts(prepared),
    fishes: input.fishing?.(landing) ?? notJudged('fishes:trip', 'how it fishes', 'the trip'),
    stows: stows(prepared),
  }
  return {
    format: 'potwright/check',
    version: 1,
    overall: worstState(Object.values(verdicts).map((verdict) => verdict.state)),
    verdicts,
  }
}

const notJudged = (rule: string, question: string, missing: string): Verdict =>
  verdictOf([cannotTell(rule, question, missing, 'trip')])
