import type { Finding } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import { significant } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'
import type { FishingAssumptions } from '../assumptions'
import { baitLife } from '../outlook'
import { stateOf } from './state-of'

const rule = 'fishes:bait-outlasts-soak'

/** Whether the bait still works at the end of the soak. */
export function baitOutlastsSoak(
  pot: Pot,
  trip: Trip | undefined,
  sheet: FishingAssumptions,
  { decimalMark }: ReaderLocale,
): Finding {
  const common = { rule, part: 'bait', standing: 'engineering' } as const
  const { bait } = pot
  const soakH = trip?.soakH
  if (!bait || soakH === undefined) {
    const missing = bait ? 'how long the pot soaks' : 'the bait and its holder'
    return {
      ...common,
      state: 'cannot-tell',
      what: `Cannot tell whether the bait lasts without ${missing}.`,
      missing,
    }
  }
  if (bait.massKg === 0)
    return { ...common, state: 'fails', what: 'There is no bait in the holder.', actual: 0, unit: 'kg' }
  const life = baitLife(bait, sheet)
  const state = stateOf(life.low - soakH, life.mid - soakH)
  // Two figures, where the spread is too wide for more.
  const [low, mid, high] = [life.low, life.mid, life.high].map((hours) => significant(hours, decimalMark, 2))
  const lasts = `The bait lasts ${low} to ${high} h, likely ${mid}; the soak is ${significant(soakH, decimalMark)} h.`
  return {
    ...common,
    state,
    what: state === 'holds' ? lasts : `${lasts} A shorter soak or a closed holder would help.`,
    actual: life.mid,
    limit: soakH,
    margin: life.mid - soakH,
    unit: 'h',
    source: {
      title:
        'Half-life of fish bait is taken from lobster bait, Fishery Bulletin 117:211-219 (2019); holders by common practice',
      confidence: 'derived',
    },
  }
}

/**
 * Whether crabs outside can feed through the netting: the bait's distance to the nearest wall against the reach
 * of a claw.
 */
export function baitOutOfReach(pot: Pot, sheet: FishingAssumptions): Finding {
  const common = { rule: 'fishes:bait-out-of-reach', part: 'bait', standing: 'engineering' } as const
  const { bait, body } = pot
  if (!bait) {
    const missing = 'where the bait hangs'
    return {
      ...common,
      state: 'cannot-tell',
      what: `Cannot tell whether the bait is out of reach without ${missing}.`,
      missing,
    }
  }
  const wallMm =
    body.shape === 'box' ? Math.min(body.lengthMm, body.widthMm) / 2 : radiusAt(body, bait.heightMm)
  const toTopMm = Math.max(0, body.heightMm - bait.heightMm)
  const distanceMm = { centre: Math.min(wallMm, toTopMm), side: 0, top: Math.min(wallMm, toTopMm) }[bait.at]
  const state = stateOf(distanceMm - sheet.clawReachMm.high, distanceMm - sheet.clawReachMm.value)
  return {
    ...common,
    state,
    what:
      state === 'holds'
        ? 'The bait hangs out of reach from outside.'
        : 'Crabs outside may feed on the bait through the netting. Hang it lower and in the middle.',
    actual: distanceMm,
    limit: sheet.clawReachMm.value,
    margin: distanceMm - sheet.clawReachMm.value,
    unit: 'mm',
    source: { title: 'Common practice; the reach of a crab is taken', confidence: 'derived' },
  }
}

/** Radius of a round body at a height, straight from base to top. */
function radiusAt(body: Exclude<Pot['body'], { shape: 'box' }>, heightMm: number): number {
  const up = Math.min(1, heightMm / body.heightMm)
  return (body.baseDiameterMm + (body.topDiameterMm - body.baseDiameterMm) * up) / 2
}
