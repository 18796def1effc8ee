import type { Finding } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { significant } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'
import type { FishingAssumptions } from '../assumptions'
import { haulPoint } from '../haul-point'
import { stateOf } from './state-of'

const practice = { title: 'Common practice', confidence: 'user' } as const

/** Whether the haul point is clear of the entrances. */
export function haulPointClear(pot: Pot, sheet: FishingAssumptions, { decimalMark }: ReaderLocale): Finding {
  const common = {
    rule: 'fishes:haul-point',
    part: 'bridle',
    standing: 'engineering',
    source: practice,
  } as const
  if (!pot.bridle || !pot.entrances) {
    const missing = pot.bridle ? 'the entrances' : 'where the rope is tied'
    return {
      ...common,
      state: 'cannot-tell',
      what: `Cannot tell whether the haul point is clear of an entrance without ${missing}.`,
      missing,
    }
  }
  const point = haulPoint(pot)
  if (!point) return { ...common, state: 'holds', what: 'On the haul no entrance hangs lowest.' }
  const state = stateOf(
    point.clearDeg - sheet.haulPointClearDeg.high,
    point.clearDeg - sheet.haulPointClearDeg.value,
  )
  return {
    ...common,
    state,
    what:
      state === 'holds'
        ? 'The haul point is between entrances.'
        : `On the haul crabs can drop out by entrance ${point.nearest + 1}. Tie the rope at ${significant(point.betterBearingDeg, decimalMark)} degrees.`,
    actual: point.clearDeg,
    limit: sheet.haulPointClearDeg.value,
    margin: point.clearDeg - sheet.haulPointClearDeg.value,
    unit: 'deg',
  }
}

/** Whether the pot sits base down; upside down, crabs feed from the top and never enter. */
export function baseDown(state: 'holds' | 'close' | 'fails' | undefined): Finding {
  const common = {
    rule: 'fishes:base-down',
    part: 'body',
    standing: 'engineering',
    source: practice,
  } as const
  if (state === undefined) {
    const missing = 'how the pot lands'
    return {
      ...common,
      state: 'cannot-tell',
      what: `Cannot tell whether the pot sits base down without ${missing}.`,
      missing,
    }
  }
  const what = {
    holds: 'The pot lands and sits base down.',
    close: 'The pot likely lands base down, but little keeps it from turning over. Put weight low.',
    fails: 'The pot can land upside down, and crabs then feed from the top. Put weight low.',
  }
  return { ...common, state, what: what[state] }
}
