import type { Entrance, Pot } from '@shared/schema/pot'

/** How far round the pot the haul point is from the nearest entrance. */
export interface HaulPoint {
  /** Angle from the haul point to the edge of the nearest entrance [deg]; negative inside it. */
  readonly clearDeg: number
  readonly nearest: number
  /** Middle of the widest stretch between entrances [deg]. */
  readonly betterBearingDeg: number
}

/**
 * Angle between the haul point and the nearest entrance in the wall. On the haul the pot hangs by that point, and
 * an entrance under it lets crabs out.
 *
 * clear = |Δ bearing| − asin(width/2/distance to the wall)
 *
 * @param pot bearings clockwise seen from above
 * @returns the angles, or undefined where the pot hangs level (three legs or more, or from the middle of the
 *   top), has no entrance in its wall, or its bridle is not known
 * @source common practice; geometry
 */
export function haulPoint(pot: Pot): HaulPoint | undefined {
  const { bridle } = pot
  const inWall = (pot.entrances ?? [])
    .map((entrance, index) => ({ entrance, index }))
    .filter(({ entrance }) => !entrance.onTop)
  const hangsLevel = bridle && (bridle.legs >= 3 || bridle.attach === 'top-centre')
  if (!bridle || hangsLevel || inWall.length === 0) return undefined
  const away = inWall.map(({ entrance, index }) => ({
    index,
    clearDeg: turn(entrance.bearingDeg, bridle.bearingDeg) - halfWidthDeg(pot, entrance),
  }))
  const nearest = away.reduce((a, b) => (b.clearDeg < a.clearDeg ? b : a))
  return {
    clearDeg: nearest.clearDeg,
    nearest: nearest.index,
    betterBearingDeg: widestMiddle(inWall.map(({ entrance }) => entrance.bearingDeg)),
  }
}

/** Half the angle that an entrance takes of the wall, seen from the middle; a box counts by its nearer wall. */
function halfWidthDeg(pot: Pot, entrance: Entrance): number {
  const { body } = pot
  const wallMm = body.shape === 'box' ? Math.min(body.lengthMm, body.widthMm) / 2 : body.baseDiameterMm / 2
  const half = entrance.widthMm / 2
  const radians = body.shape === 'box' ? Math.atan2(half, wallMm) : Math.asin(Math.min(1, half / wallMm))
  return (radians * 180) / Math.PI
}

/** Smaller angle between two bearings [deg]. */
function turn(a: number, b: number): number {
  const round = Math.abs(a - b) % 360
  return Math.min(round, 360 - round)
}

function widestMiddle(bearings: readonly number[]): number {
  const sorted = [...bearings].sort((a, b) => a - b)
  const gaps = sorted.map((from, i) => {
    const next = sorted[i + 1] ?? (sorted[0] ?? from) + 360
    return { from, width: next - from }
  })
  const widest = gaps.reduce((a, b) => (b.width > a.width ? b : a))
  return (widest.from + widest.width / 2) % 360
}
