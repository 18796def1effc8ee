import type { PartName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { potGeometry } from '../geometry/build'
import type { Point, PotGeometry, Tube } from '../geometry/pot-geometry'
import { openingSchedule, type OpeningRow } from './opening-schedule'
import { viewDimensions, type SizeLine } from './view-dimensions'
import { viewNames, viewPlanes, type FlatPoint, type ViewName } from './view-plane'

/** A bar or an edge as it is drawn: its centre line on paper [m] and its thickness. */
export interface DrawnLine {
  readonly part: PartName
  readonly points: readonly FlatPoint[]
  readonly closed: boolean
  readonly widthM: number
  /** Lies behind the middle of the pot, so that it is drawn broken. */
  readonly behind: boolean
}

/** The letter of an opening, at its middle. */
interface DrawnLetter {
  readonly letter: string
  readonly at: FlatPoint
}

export interface PotDrawing {
  readonly view: ViewName
  readonly lines: readonly DrawnLine[]
  readonly letters: readonly DrawnLetter[]
  readonly sizes: readonly SizeLine[]
  /** Left, bottom, right and top of the pot in this view [m], without its sizes. */
  readonly bounds: { readonly min: FlatPoint; readonly max: FlatPoint }
}

// What a maker works to. A wrap is named in the parts list: its turns would hide the bar. So would the netting.
const drawnParts: ReadonlySet<PartName> = new Set([
  'base-ring',
  'middle-ring',
  'top-ring',
  'strut',
  'cross-bar',
  'frame',
  'entrances',
  'escape-gaps',
  'release',
  'doors',
])

/**
 * Three views of a pot as built, for a workshop drawing: bars at their true thickness, openings with letters, and the
 * sizes to work to.
 *
 * Parallel projection of the same geometry as the 3D view; a bar whose points lie behind the pot's middle on the whole
 * is marked as behind, rings never.
 *
 * @returns front, side and above, in metres with up as positive
 */
export function potViews(pot: Pot): PotDrawing[] {
  // The fewest netting lines the geometry will give: none of them is drawn here.
  const geometry = potGeometry(pot, { withFloat: false, maxSegments: 1 })
  const openings = openingSchedule(pot)
  return viewNames.map((view) => drawingOf(view, pot, geometry, openings))
}

function drawingOf(
  view: ViewName,
  pot: Pot,
  { tubes, bounds }: PotGeometry,
  openings: readonly OpeningRow[],
): PotDrawing {
  const plane = viewPlanes[view]
  const middleM = (bounds.min[2] + bounds.max[2]) / 2
  const lines = tubes
    .filter((tube) => drawnParts.has(tube.part))
    .map((tube): DrawnLine => {
      const points = pointsOf(tube)
      const depth = points.reduce((sum, at) => sum + plane.near(at, middleM), 0) / points.length
      return {
        part: tube.part,
        points: points.map(plane.flat),
        closed: tube.closed,
        widthM: 2 * tube.radiusM,
        behind: !tube.part.endsWith('ring') && depth < -1e-6,
      }
    })
  const letters = openings
    .filter((row) => view === 'above' || plane.near(row.at, middleM) > -1e-6)
    .map((row): DrawnLetter => ({
      letter: row.letter,
      at: plane.flat(view === 'above' && row.face === 'wall' ? outside(row.at) : row.at),
    }))
  return {
    view,
    lines,
    letters,
    sizes: viewDimensions(pot, view),
    bounds: { min: plane.flat(bounds.min), max: plane.flat(bounds.max) },
  }
}

function pointsOf({ points }: Tube): Point[] {
  const list: Point[] = []
  for (let i = 0; i + 2 < points.length; i += 3)
    list.push([points[i] ?? 0, points[i + 1] ?? 0, points[i + 2] ?? 0])
  return list
}

// Far enough off for a letter to stand clear of the ring.
const clearM = 0.05

/** A point beside the wall, for a letter that would lie on the wall itself seen from above. */
function outside([x, y, z]: Point): Point {
  const reach = Math.hypot(x, y) || 1
  const out = (reach + clearM) / reach
  return [x * out, y * out, z]
}
