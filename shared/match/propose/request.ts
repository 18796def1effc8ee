import type { Check, VerdictName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import type { CheckInput } from '@shared/verdicts/check-input'
import { fullCheck } from '@shared/verdicts/full-check'
import { tripTo, type MatchSetting } from '../match'
import type { MatchWater } from '../match-water'

export interface ProposeRequest {
  /** Shapes to start from. What they are made of is changed, their outline is not. */
  readonly shapes: readonly Pot[]
  readonly places: readonly MatchWater[]
  /** Materials, coefficients, rules, and the trip with its crabs, soak and stowage. */
  readonly setting: MatchSetting
  /** Heaviest pot that may go over the side, bait included, catch and water not [kg]. */
  readonly mostKg?: number
  /** Verdicts that need not hold, as `lifts` where there is a hauler. */
  readonly waived?: readonly VerdictName[]
}

/** Everything a verdict needs to know of one place. */
export function inputAt(pot: Pot, { water, predicted }: MatchWater, setting: MatchSetting): CheckInput {
  const { materials, coefficients, locale } = setting
  return {
    pot,
    materials,
    coefficients,
    ...(locale && { locale }),
    trip: tripTo(water, setting.trip),
    conditions: conditionsAt(water, predicted),
  }
}

/** The six verdicts on a pot at one place. */
export function checkAt(pot: Pot, { water, predicted }: MatchWater, setting: MatchSetting): Check {
  const { packFor, ...shared } = setting
  return fullCheck({
    ...shared,
    pot,
    trip: tripTo(water, setting.trip),
    water,
    predicted,
    pack: packFor(water),
  })
}

/** The verdicts that need neither current nor rope, and so are quick: legal, fishes and stows. */
export function tradeCheckAt(pot: Pot, { water }: MatchWater, setting: MatchSetting): Check {
  const still: Water = { ...water }
  delete still.current
  return checkAt(pot, { water: still, predicted: {}, ladder: new Float64Array(), index: undefined }, setting)
}
