import type { Pot } from '@shared/schema/pot'
import { entranceShapes } from '../entrance-shape'
import { wallPointBeside } from '../geometry/curves'
import { openingsOf, type Opening } from '../geometry/openings'
import type { Point } from '../geometry/pot-geometry'
import { shapeOf, type PotShape } from '../shape'

/** One opening of a pot as a maker sets it out. */
export interface OpeningRow {
  readonly letter: string
  readonly part: Opening['part']
  readonly index: number
  readonly face: Opening['face']
  readonly round: boolean
  readonly widthM: number
  readonly heightM: number
  /** Height of its lower edge above the base, for one in the wall [m]. */
  readonly lowerEdgeM?: number
  /** Clockwise from the front, seen from above [deg], 0 to below 360. */
  readonly bearingDeg: number
  /** Its middle. */
  readonly at: Point
}

/**
 * Every opening that is cut in the netting, lettered in the order of the design.
 *
 * Doors are left out: their size is the maker's.
 *
 * @returns one row an opening, a gap that is there twice having two
 */
export function openingSchedule(pot: Pot): OpeningRow[] {
  const shape = shapeOf(pot.body)
  return openingsOf(pot, shape, entranceShapes(pot, shape))
    .filter((opening) => opening.cuts)
    .map((opening, index): OpeningRow => {
      const { part, face, round, widthM, heightM, placeM, angleRad } = opening
      return {
        ...{ letter: letterOf(index), part, index: opening.index, face, round, widthM, heightM },
        ...(face === 'wall' ? { lowerEdgeM: Math.max(0, placeM - heightM / 2) } : {}),
        bearingDeg: bearingOf(angleRad),
        at: middleOf(opening, shape),
      }
    })
}

/** A to Z, then AA, AB and so on. */
export function letterOf(index: number): string {
  const before = Math.floor(index / 26)
  return `${before > 0 ? letterOf(before - 1) : ''}${String.fromCharCode(65 + (index % 26))}`
}

function bearingOf(angleRad: number): number {
  const degrees = Math.round((-angleRad * 180) / Math.PI)
  return ((degrees % 360) + 360) % 360
}

function middleOf({ face, angleRad, placeM }: Opening, shape: PotShape): Point {
  if (face === 'wall') return wallPointBeside(shape, angleRad, 0, placeM)
  const z = face === 'top' ? shape.heightM : 0
  return [placeM * Math.cos(angleRad), placeM * Math.sin(angleRad), z]
}
