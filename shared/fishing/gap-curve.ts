import type { Spread } from '@shared/schema/check'
import type { EscapeGap } from '@shared/schema/pot'
import type { FishingAssumptions } from './assumptions'
import { gapSize50 } from './gap-size'
import type { LegalSize } from './legal-size'
import { retention, retentionWithContact } from './selectivity'
import type { CrabSpecies } from './species'

/** Share of crabs of a size that stay behind a gap: cautious, middle and hopeful figures of the gap. */
export interface GapPoint {
  readonly sizeMm: number
  readonly kept: Spread
}

const points = 61

/**
 * Share of crabs kept by a gap against their size, around the legal size. It speaks of many crabs, never of one,
 * and not of soft ones.
 *
 * r' = 1 − C(1 − r), r logistic about the size of which half stay
 *
 * @param gap     the gap
 * @param legal   species, measure and least legal size
 * @param species its proportions
 * @param sheet   contact and selection range
 * @returns points from six tenths to one and a half of the legal size, or undefined where the species has no
 *   figure for this kind of gap
 * @source as `retention`, `retentionWithContact` and `gapSize50`
 */
export function gapCurve(
  gap: EscapeGap,
  legal: LegalSize,
  species: CrabSpecies,
  sheet: FishingAssumptions,
): GapPoint[] | undefined {
  const size50 = gapSize50(gap, legal, species)
  if (!size50) return undefined
  const kept = (sizeMm: number, middleMm: number) =>
    retentionWithContact(
      retention(sizeMm, middleMm, sheet.selectionShare.value * middleMm),
      sheet.gapContact.value,
    )
  return Array.from({ length: points }, (_, i) => {
    const sizeMm = legal.sizeMm * (0.6 + (0.9 * i) / (points - 1))
    return {
      sizeMm,
      kept: { low: kept(sizeMm, size50.high), mid: kept(sizeMm, size50.mid), high: kept(sizeMm, size50.low) },
    }
  })
}
