import type { PotGeometry } from '@shared/design/geometry/pot-geometry'
import type { Check, Figure } from '@shared/schema/check'
import { Matrix4, Vector3 } from 'three'

/** What the strongest current does to the pot, by the middle coefficients. */
export type DriftOutcome = 'stays' | 'slides' | 'tips' | 'unknown'

function middle(figure: Figure | undefined): number | undefined {
  if (figure === undefined) return undefined
  if (typeof figure === 'number') return figure
  return 'mid' in figure ? figure.mid : undefined
}

/** Whichever comes first as the current grows; unknown where the check could not tell. */
export function driftOutcome(check: Check | undefined): DriftOutcome {
  const figures = check?.verdicts.holdsBottom.figures
  const worst = middle(figures?.['worstCurrentMps'])
  const slide = middle(figures?.['slideCurrentMps'])
  const tip = middle(figures?.['tipCurrentMps'])
  if (worst === undefined || (slide === undefined && tip === undefined)) return 'unknown'
  const first = Math.min(slide ?? Infinity, tip ?? Infinity)
  if (worst < first) return 'stays'
  return (tip ?? Infinity) < (slide ?? Infinity) ? 'tips' : 'slides'
}

/** The point of the footprint farthest down-current, on the bottom: what a tipping pot turns about. */
export function tippingEdge(geometry: PotGeometry, flow: Vector3): Vector3 {
  const low = geometry.bounds.min[2] + 0.25 * (geometry.bounds.max[2] - geometry.bounds.min[2])
  let reach = 0
  for (const tube of geometry.tubes) {
    for (let k = 0; k + 2 < tube.points.length; k += 3) {
      const [x = 0, y = 0, z = 0] = tube.points.subarray(k, k + 3)
      const pot = tube.part !== 'rope' && tube.part !== 'bridle'
      if (pot && z <= low) reach = Math.max(reach, x * flow.x + y * flow.y + tube.radiusM)
    }
  }
  if (reach === 0) {
    reach = Math.max(
      ...[geometry.bounds.min, geometry.bounds.max].map(
        ([x, y]) => Math.abs(x * flow.x) + Math.abs(y * flow.y),
      ),
    )
  }
  return new Vector3(flow.x * reach, flow.y * reach, geometry.bounds.min[2])
}

const tipRad = (28 * Math.PI) / 180
const slideShare = 0.45

/** Where the pot has got to, from 0 as set to 1 as shown; z up. */
export function driftPose(outcome: DriftOutcome, edge: Vector3, flow: Vector3, share: number): Matrix4 {
  if (outcome === 'slides') {
    return new Matrix4().makeTranslation(flow.clone().multiplyScalar(edge.length() * slideShare * share))
  }
  if (outcome !== 'tips') return new Matrix4()
  const axis = new Vector3(-flow.y, flow.x, 0).normalize()
  return new Matrix4()
    .makeTranslation(edge)
    .multiply(new Matrix4().makeRotationAxis(axis, tipRad * share))
    .multiply(new Matrix4().makeTranslation(edge.clone().negate()))
}
