import type { Spread } from '@shared/schema/check'
import { notchToTip, type CrabMeasure, type CrabSpecies } from './species'

/**
 * What a crab of one measured size would come to measured another way. An estimate from a species' usual
 * proportions, never to be put against a legal limit.
 *
 * Through the shell length: CL = q₁·CW₁, CW₂ = CL/q₂, with the spreads of q₁ and q₂ taken as independent. Between
 * tip and notch width of a swimming crab CW_notch = 0.795·CW_tip, which is known better than either length.
 *
 * @param species proportions
 * @param from    how the size was taken
 * @param to      how it would be taken
 * @param sizeMm  size [mm], > 0
 * @returns the other size with its spread [mm], or undefined where no proportion is known for one of the two
 * @source proportions as in `species.ts`; notch over tip width from 68/86 and 75/94 mm shells
 */
export function convertSize(
  species: CrabSpecies,
  from: CrabMeasure,
  to: CrabMeasure,
  sizeMm: number,
): Spread | undefined {
  if (from === to) return { low: sizeMm, mid: sizeMm, high: sizeMm }
  const perFrom = lengthPer(species, from)
  const perTo = lengthPer(species, to)
  if (!perFrom || !perTo) return undefined
  if (from === 'tip-to-tip' && to === 'notch-to-notch') return notchSpread(sizeMm * notchToTip)
  if (from === 'notch-to-notch' && to === 'tip-to-tip') return notchSpread(sizeMm / notchToTip)
  return {
    low: (sizeMm * perFrom.low) / perTo.high,
    mid: (sizeMm * perFrom.mid) / perTo.mid,
    high: (sizeMm * perFrom.high) / perTo.low,
  }
}

const exact: Spread = { low: 1, mid: 1, high: 1 }

function lengthPer(species: CrabSpecies, measure: CrabMeasure): Spread | undefined {
  return measure === 'length' ? exact : species.lengthPer[measure]
}

// The two shells it rests on give 0.791 and 0.798; a single crab may stand a little further off.
const NOTCH_SPREAD = 0.02

const notchSpread = (mm: number): Spread => ({
  low: mm * (1 - NOTCH_SPREAD),
  mid: mm,
  high: mm * (1 + NOTCH_SPREAD),
})
