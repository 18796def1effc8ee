import type { Entrance, Pot } from '@shared/schema/pot'
import { reachAt, type PotShape } from './shape'
import { angleOfBearing, mm } from './si'

/** An entrance in metres: the opening in the wall or top, and the eye the crab drops through. */
export interface EntranceShape {
  readonly index: number
  readonly kind: Entrance['kind']
  readonly onTop: boolean
  readonly angleRad: number
  readonly widthM: number
  readonly heightM: number
  readonly sillM: number
  /** How far the funnel reaches in, 0 for a bare slit or flap. */
  readonly depthM: number
  readonly eyeWidthM: number
  readonly eyeHeightM: number
}

// Judgement, where the design gives no depth: a funnel reaches two fifths of the way to the middle and
// narrows to 0.8 of its width and 0.75 of its height.
const usualDepthShare = 0.4
const eyeWidthShare = 0.8
const eyeHeightShare = 0.75

/**
 * The entrances of a design in metres.
 *
 * @returns one entry an entrance, in the design's order; empty without any
 */
export function entranceShapes(pot: Pot, shape: PotShape): EntranceShape[] {
  return (pot.entrances ?? []).map((entrance, index) => {
    const angleRad = angleOfBearing(entrance.bearingDeg)
    const widthM = mm(entrance.widthMm)
    const heightM = mm(entrance.heightMm)
    const sillM = mm(entrance.sillMm)
    const onTop = entrance.onTop === true
    const reach = onTop ? shape.heightM : reachAt(shape, angleRad, sillM + heightM / 2)
    const narrows = entrance.kind === 'funnel'
    return {
      index,
      kind: entrance.kind,
      onTop,
      angleRad,
      widthM,
      heightM,
      sillM,
      depthM: narrows ? Math.min(mm(entrance.depthMm ?? 0) || usualDepthShare * reach, 0.95 * reach) : 0,
      eyeWidthM: narrows ? widthM * eyeWidthShare : widthM,
      eyeHeightM: narrows ? heightM * eyeHeightShare : heightM,
    }
  })
}

/**
 * Netting in the sides of one funnel [m2].
 *
 * A = (P₁ + P₂)/2 · s, P perimeters of the opening and the eye, s the mean slant; 0 without a funnel.
 *
 * @source lateral area of a frustum with rectangular ends, mean-perimeter form
 */
export function funnelArea(entrance: EntranceShape): number {
  if (entrance.depthM === 0) return 0
  const mouth = 2 * (entrance.widthM + entrance.heightM)
  const eye = 2 * (entrance.eyeWidthM + entrance.eyeHeightM)
  const inset =
    ((entrance.widthM - entrance.eyeWidthM) / 2 + (entrance.heightM - entrance.eyeHeightM) / 2) / 2
  return ((mouth + eye) / 2) * Math.hypot(entrance.depthM, inset)
}
