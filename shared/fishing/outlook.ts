import type { Spread } from '@shared/schema/check'
import type { Bait, Pot } from '@shared/schema/pot'
import type { FishingAssumptions } from './assumptions'
import { baitLifeH, baitStrength, holderDecayRate } from './bait'
import { soakCurve, soakMarks, type SoakRates } from './soak-curve'

const openKinds: readonly Pot['gearKind'][] = [
  'dilly',
  'hoop-net',
  'drop-net',
  'lift-net',
  'ring-net',
  'star-trap',
]

/** Whether gear holds crabs only while it is pulled, so that soak is in minutes and nothing is shut in. */
export function isOpenGear(pot: Pot): boolean {
  return openKinds.includes(pot.gearKind)
}

type Level = 'low' | 'value' | 'high'

/** Decay rate of the bait at one level of each of its three figures [1/h]. */
function decayAt(bait: Bait, sheet: FishingAssumptions, life: Level, shield: Level): number {
  const holder = {
    clip: [sheet.clipShield[shield], sheet.clipStrippedH[life]],
    'mesh-bag': [sheet.meshBagShield[shield], sheet.meshBagStrippedH[life]],
    'wire-basket': [sheet.wireBasketShield[shield], sheet.wireBasketStrippedH[life]],
    jar: [sheet.jarShield[shield], Infinity],
  } as const
  const [shieldFactor, strippedH] = holder[bait.holder]
  return holderDecayRate({ halfLifeH: sheet.baitHalfLifeH[life], shieldFactor, strippedH })
}

/**
 * Decay rate of the bait in its holder: low is the cautious one, which fades fastest.
 *
 * @returns rates [1/h]
 */
function baitDecay(bait: Bait, sheet: FishingAssumptions): Spread {
  return {
    low: decayAt(bait, sheet, 'low', 'high'),
    mid: decayAt(bait, sheet, 'value', 'value'),
    high: decayAt(bait, sheet, 'high', 'low'),
  }
}

/** Share of the first scent left after a soak [h], 0-1: cautious, middle, hopeful. */
export function baitLeft(bait: Bait, sheet: FishingAssumptions, soakH: number): Spread {
  return mapSpread(baitDecay(bait, sheet), (rate) => baitStrength(rate, soakH))
}

/** Hours until the bait is spent: cautious, middle, hopeful. */
export function baitLife(bait: Bait, sheet: FishingAssumptions): Spread {
  return mapSpread(baitDecay(bait, sheet), baitLifeH)
}

/** Escape rate past a pot's leakiest entrance [per crab per h]: cautious (most), middle, hopeful (least). */
function escapeRate(pot: Pot, sheet: FishingAssumptions): Spread {
  const kinds = new Set((pot.entrances ?? []).map((entrance) => entrance.kind))
  const row = kinds.has('funnel')
    ? sheet.funnelEscapePerDay
    : kinds.has('one-way')
      ? sheet.oneWayEscapePerDay
      : sheet.slitEscapePerDay
  return { low: row.high / 24, mid: row.value / 24, high: row.low / 24 }
}

/** Soak past which nothing is looked for [h]. */
export const longestSoakH = 72

/** Rates of a pot's soak curve at the cautious, middle and hopeful figures. */
export function soakRates(pot: Pot, bait: Bait, sheet: FishingAssumptions): Record<keyof Spread, SoakRates> {
  const decay = baitDecay(bait, sheet)
  const escape = escapeRate(pot, sheet)
  const rates = (level: keyof Spread, drawPerH: number): SoakRates => ({
    drawPerH,
    decayPerH: decay[level],
    escapePerH: escape[level],
  })
  return {
    low: rates('low', sheet.drawPerH.low),
    mid: rates('mid', sheet.drawPerH.value),
    high: rates('high', sheet.drawPerH.high),
  }
}

/**
 * Soak that brings nine tenths of the best this pot can do within three days [h], by the three sets; for open
 * gear the usual time between pulls.
 */
export function bestSoak(pot: Pot, bait: Bait, sheet: FishingAssumptions): Spread {
  if (isOpenGear(pot)) {
    const { low, value, high } = sheet.openGearSoakMin
    return { low: low / 60, mid: value / 60, high: high / 60 }
  }
  return mapSpread(
    soakRates(pot, bait, sheet),
    (rates) => soakMarks(soakCurve(rates, longestSoakH)).nearlyBestH,
  )
}

function mapSpread<T>(spread: Record<keyof Spread, T>, f: (x: T) => number): Spread {
  return { low: f(spread.low), mid: f(spread.mid), high: f(spread.high) }
}
