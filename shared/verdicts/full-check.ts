import type { FishingAssumptions } from '@shared/fishing/assumptions'
import { fishes, type FishesInput } from '@shared/fishing/fishes'
import { judge } from '@shared/rules/judge'
import type { Check, Verdict } from '@shared/schema/check'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import { checkPot, type CheckInput } from './check-pot'
import { cannotTell, verdictOf } from './judging'
import { legalSizes } from './legal-sizes'

/** A design with everything that may be known about where and how it is fished. */
export interface FullCheckInput extends Omit<CheckInput, 'conditions' | 'legal' | 'fishing'> {
  readonly water?: Water | undefined
  /** From stations, where the water uses them. */
  readonly predicted?: Parameters<typeof conditionsAt>[1]
  /** Rules of the trip's region; left out where there are none. */
  readonly pack?: RulePack | undefined
  /** The user's own figures of the fishing models; the shipped ones where left out. */
  readonly fishingFigures?: FishingAssumptions | undefined
  /** Today, for rules that started in the past where the trip has no date. */
  readonly today?: string | undefined
}

/**
 * All six verdicts together: the models, the rules of the region and how it fishes. One way of asking, so that the
 * Bench, the Match and the command line never differ.
 *
 * @param input design, tables and coefficients; the trip, the water and the rules where they are known
 * @returns the check; what is not known is "cannot tell" with what is missing
 */
export function fullCheck(input: FullCheckInput): Check {
  const { water, predicted, pack, ...known } = input
  const conditions = water && conditionsAt(water, predicted)
  return checkPot({
    ...known,
    ...(conditions ? { conditions } : {}),
    legal: legalVerdict(input),
    fishing: (landing) => fishingVerdict(input, pack, landing?.state),
  })
}

function legalVerdict({ pot, trip, water, pack, today, locale }: FullCheckInput): Verdict {
  if (pack) return judge(pack, { pot, trip, water, now: today, decimalMark: locale?.decimalMark })
  const missing = trip?.region === undefined ? 'the region' : `rules for ${trip.region}`
  return verdictOf([cannotTell('legal:region', 'whether it is legal', missing, 'trip')])
}

function fishingVerdict(
  { pot, trip, fishingFigures, locale }: FullCheckInput,
  pack: RulePack | undefined,
  landing: FishesInput['landing'],
): Verdict {
  return fishes({
    pot,
    ...(trip ? { trip } : {}),
    ...(pack && trip ? { legalSizes: legalSizes(pack, trip) } : {}),
    ...(locale ? { locale } : {}),
    ...(landing ? { landing } : {}),
    ...(fishingFigures ? { assumptions: fishingFigures } : {}),
  })
}
