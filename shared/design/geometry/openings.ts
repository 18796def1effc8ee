import type { Pot } from '@shared/schema/pot'
import type { EntranceShape } from '../entrance-shape'
import { reachAt, type PotShape } from '../shape'
import { angleOfBearing, mm } from '../si'

/** A hole in the wall or the top, in metres: where it is and how large. */
export interface Opening {
  readonly part: 'entrances' | 'escape-gaps' | 'release' | 'doors'
  readonly index: number
  readonly face: 'wall' | 'top' | 'base'
  readonly round: boolean
  /** True where netting is cut away; a door is only outlined. */
  readonly cuts: boolean
  readonly angleRad: number
  readonly widthM: number
  readonly heightM: number
  /** Height of its centre on the wall; on the top or base, distance from the axis. */
  readonly placeM: number
}

// Judgement: where a door, a cord opening or a gap has no size or place of its own.
const doorShare = 0.45
const cordOpeningMm = { width: 110, height: 110 }

/** Every opening of the design, those that cut the netting and the doors that only outline it. */
export function openingsOf(pot: Pot, shape: PotShape, entrances: readonly EntranceShape[]): Opening[] {
  return [
    ...entrances.map((entrance) => entranceOpening(entrance, shape)),
    ...gapOpenings(pot, shape),
    ...doorOpenings(pot, shape),
    ...releaseOpening(pot),
  ]
}

function entranceOpening(entrance: EntranceShape, shape: PotShape): Opening {
  const { index, angleRad, widthM, heightM, onTop } = entrance
  const reach = reachAt(shape, angleRad, shape.heightM)
  return {
    part: 'entrances',
    index,
    face: onTop ? 'top' : 'wall',
    round: false,
    cuts: true,
    angleRad,
    widthM,
    heightM,
    // On the top, an entrance at the front half-way out; a single large one sits in the middle.
    placeM: onTop
      ? Math.max(0, Math.min(reach / 2, reach - heightM / 2 - 0.02))
      : entrance.sillM + heightM / 2,
  }
}

/** Gaps spread evenly from their bearing, or from 45° to stay clear of entrances at the front and back. */
function gapOpenings(pot: Pot, shape: PotShape): Opening[] {
  return (pot.escapeGaps ?? []).flatMap((gap, index) =>
    Array.from({ length: gap.count }, (_, i): Opening => {
      const bearing = (gap.bearingDeg ?? 45) + (360 * i) / gap.count
      const round = gap.shape === 'circle'
      const widthM = mm(round ? gap.diameterMm : gap.widthMm)
      const heightM = mm(round ? gap.diameterMm : gap.heightMm)
      const onTop = gap.onTop === true
      const angleRad = angleOfBearing(bearing)
      const reach = reachAt(shape, angleRad, shape.heightM)
      return {
        part: 'escape-gaps',
        index,
        face: onTop ? 'top' : 'wall',
        round,
        cuts: true,
        angleRad,
        widthM,
        heightM,
        placeM: onTop ? reach * 0.7 : mm(gap.bottomEdgeMm) + heightM / 2,
      }
    }),
  )
}

function doorOpenings(pot: Pot, shape: PotShape): Opening[] {
  return (pot.doors ?? []).map((door, index): Opening => {
    const angleRad = angleOfBearing(door.bearingDeg ?? 90)
    const z = door.where === 'base' ? 0 : shape.heightM
    const reach = reachAt(shape, angleRad, door.where === 'side' ? shape.heightM / 2 : z)
    const side = door.where === 'side'
    return {
      part: 'doors',
      index,
      face: door.where === 'side' ? 'wall' : door.where,
      round: false,
      cuts: false,
      angleRad,
      widthM: reach * 2 * doorShare,
      heightM: side ? shape.heightM * 0.6 : reach * doorShare,
      placeM: side ? shape.heightM / 2 : reach * 0.55,
    }
  })
}

/** The opening that comes free when the cord rots: in the wall unless the cord holds the lid or door. */
function releaseOpening(pot: Pot): Opening[] {
  const release = pot.release
  if (!release || release.kind !== 'cord-panel') return []
  const widthM = mm(release.openingWidthMm ?? cordOpeningMm.width)
  const heightM = mm(release.openingHeightMm ?? cordOpeningMm.height)
  const bottom = mm(release.bottomEdgeMm ?? Math.max(0, pot.body.heightMm / 2 - (heightM * 1000) / 2))
  return [
    {
      part: 'release',
      index: 0,
      face: 'wall',
      round: false,
      cuts: true,
      angleRad: angleOfBearing(135),
      widthM,
      heightM,
      placeM: bottom + heightM / 2,
    },
  ]
}
