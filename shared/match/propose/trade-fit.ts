import type { Pot } from '@shared/schema/pot'
import type { MatchWater } from '../match-water'
import type { MatchSetting } from '../match'
import { tradeFaults } from './acceptance'
import { tradeParts } from './part-options'
import { tradeCheckAt } from './request'

// A part chosen early may be put right by a second look once the others are chosen.
const rounds = 2

/**
 * A shape fitted out for the rules and the crabs of all places: part by part, the choice with the fewest faults in
 * the verdicts on law, fishing and stowing. The part as it stands is kept unless another is better.
 *
 * @param shape   design to start from
 * @param places  waters, made ready
 * @param setting materials, rules and trip
 * @returns the fitted design; always the same for the same question
 */
export function fitTrade(shape: Pot, places: readonly MatchWater[], setting: MatchSetting): Pot {
  const faultsOf = (pot: Pot) =>
    places.reduce((sum, place) => sum + tradeFaults(tradeCheckAt(pot, place, setting)), 0)
  let best = shape
  let faults = faultsOf(shape)
  let before = Infinity
  for (let round = 0; round < rounds && faults < before; round++) {
    before = faults
    for (const options of tradeParts)
      for (const pot of options(best, setting.materials)) {
        const tried = faultsOf(pot)
        if (tried >= faults) continue
        best = pot
        faults = tried
      }
  }
  return best
}
