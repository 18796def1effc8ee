import type { Spread } from '@shared/schema/check'
import type { Bait, Pot } from '@shared/schema/pot'
import type { FishingAssumptions } from './assumptions'
import { baitLeft, longestSoakH, soakRates } from './outlook'
import { soakCurve } from './soak-curve'

/** A share at one soak: cautious, middle and hopeful. */
export interface SoakPoint {
  readonly hours: number
  readonly share: Spread
}

const pointStepH = 0.5
const hours = Array.from({ length: longestSoakH / pointStepH + 1 }, (_, i) => i * pointStepH)

/**
 * Share of the first scent left in the water over a soak of up to three days.
 *
 * @param bait  the bait in its holder
 * @param sheet figures
 * @returns points every half hour
 * @source as `baitLeft`
 */
export function scentOverSoak(bait: Bait, sheet: FishingAssumptions): SoakPoint[] {
  return hours.map((soakH) => ({ hours: soakH, share: baitLeft(bait, sheet, soakH) }))
}

/**
 * Catch against soak as a share of the best the same pot does within three days: a shape, never a number of crabs.
 *
 * Each of the three sets of figures is drawn against its own best; the band is what lies between them.
 *
 * @param pot   entrances
 * @param bait  the bait in its holder
 * @param sheet figures
 * @returns points every half hour, shares 0-1
 * @source as `soakCurve`
 */
export function catchOverSoak(pot: Pot, bait: Bait, sheet: FishingAssumptions): SoakPoint[] {
  const rates = soakRates(pot, bait, sheet)
  const shape = (level: keyof Spread) => {
    const { share, stepH } = soakCurve(rates[level], longestSoakH)
    const best = share.reduce((most, one) => Math.max(most, one), 0)
    return (soakH: number) => (share[Math.round(soakH / stepH)] ?? 0) / best
  }
  const [low, mid, high] = [shape('low'), shape('mid'), shape('high')]
  return hours.map((soakH) => {
    const all = [low(soakH), mid(soakH), high(soakH)]
    return { hours: soakH, share: { low: Math.min(...all), mid: mid(soakH), high: Math.max(...all) } }
  })
}
