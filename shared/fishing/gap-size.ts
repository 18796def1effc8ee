import type { Spread } from '@shared/schema/check'
import type { EscapeGap } from '@shared/schema/pot'
import { shellOf } from './body'
import type { LegalSize } from './legal-size'
import { gapHeightShare, gapLength50 } from './selectivity'
import type { CrabSpecies } from './species'

/**
 * Size of which half stay behind a gap, in the measure of the legal size: small, middle and large estimate.
 *
 * Rectangle: the size whose shell is as deep as the gap is high, or as long as it is wide, whichever is less.
 * Circle: the diameter times the species' own ratio.
 *
 * @param gap     the gap
 * @param legal   species and measure
 * @param species its proportions
 * @returns sizes [mm], or undefined where the species has no figure for that kind of gap and measure
 */
export function gapSize50(gap: EscapeGap, legal: LegalSize, species: CrabSpecies): Spread | undefined {
  if (gap.shape === 'circle') {
    const { ring } = species
    if (!ring || ring.measure !== legal.measure) return undefined
    return {
      low: ring.perDiameter.low * gap.diameterMm,
      mid: ring.perDiameter.mid * gap.diameterMm,
      high: ring.perDiameter.high * gap.diameterMm,
    }
  }
  const perMm = shellOf(species, legal.measure, 1)
  if (!perMm?.depthMm) return undefined
  const { depthMm, lengthMm } = perMm
  const height = Math.min(gap.heightMm, gap.widthMm)
  const width = Math.max(gap.heightMm, gap.widthMm)
  const size = (depth: number, length: number) => Math.min(gapLength50(height, depth), width / length)
  return {
    low: size(depthMm.high, lengthMm.high),
    mid: size(depthMm.mid, lengthMm.mid),
    high: size(depthMm.low, lengthMm.low),
  }
}

/**
 * Height of a rectangular gap that suits a legal size: 0.95 of the depth of the smallest legal crab.
 *
 * @returns heights [mm], or undefined where the depth of the shell is not known
 * @source design rule derived from gaps in use; no rule of any place
 */
export function suitedGapHeight(legal: LegalSize, species: CrabSpecies): Spread | undefined {
  const depth = shellOf(species, legal.measure, legal.sizeMm)?.depthMm
  return (
    depth && {
      low: gapHeightShare * depth.low,
      mid: gapHeightShare * depth.mid,
      high: gapHeightShare * depth.high,
    }
  )
}
