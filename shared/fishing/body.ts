import type { Spread } from '@shared/schema/check'
import type { CrabMeasure, CrabSpecies } from './species'

/**
 * Shell length from shell width, CL = q·CW.
 *
 * @param widthMm       shell width [mm]
 * @param lengthToWidth q for that species and way of measuring the width
 * @returns shell length [mm]
 */
export function lengthFromWidth(widthMm: number, lengthToWidth: number): number {
  return widthMm * lengthToWidth
}

/** Depth of the shell from its length, CD = q·CL [mm]. */
export function depthFromLength(lengthMm: number, depthToLength: number): number {
  return lengthMm * depthToLength
}

/** Width over the spine tips from the width between the notches ahead of them [mm]. */
export function tipFromNotch(notchWidthMm: number, notchToTip: number): number {
  return notchWidthMm / notchToTip
}

/** A crab's shell as far as its proportions are known; `depthMm` is left out where no proportion was found. */
export interface CrabShell {
  readonly lengthMm: Spread
  readonly depthMm?: Spread
}

/**
 * Length and depth of the shell of a crab of one measured size. An estimate from a species' usual proportions,
 * never to be put against a legal limit.
 *
 * @param species proportions
 * @param measure how the size is taken
 * @param sizeMm  size [mm]
 * @returns the shell with its spread, or undefined where the species has no proportion for that measure
 */
export function shellOf(species: CrabSpecies, measure: CrabMeasure, sizeMm: number): CrabShell | undefined {
  const perSize = measure === 'length' ? exact : species.lengthPer[measure]
  if (!perSize) return undefined
  const lengthMm = scaled(perSize, sizeMm)
  if (species.depthPerLength) return { lengthMm, depthMm: product(lengthMm, species.depthPerLength) }
  const perWidth = species.depthPerWidth
  if (perWidth && measure !== 'length') return { lengthMm, depthMm: scaled(perWidth, sizeMm) }
  return { lengthMm }
}

const exact: Spread = { low: 1, mid: 1, high: 1 }

function scaled(spread: Spread, by: number): Spread {
  return { low: spread.low * by, mid: spread.mid * by, high: spread.high * by }
}

function product(a: Spread, b: Spread): Spread {
  return { low: a.low * b.low, mid: a.mid * b.mid, high: a.high * b.high }
}
