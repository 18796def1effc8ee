import type { Point } from '@shared/design/geometry/pot-geometry'
import type { Entrance } from '@shared/schema/pot'
import { Quaternion, Vector3 } from 'three'

/** How a pot hangs by its haul point: turned so that its centre of gravity comes under that point. */
export function haulTurn(haulPoint: Point, centreOfGravity: Point): Quaternion {
  const up = new Vector3(...haulPoint).sub(new Vector3(...centreOfGravity))
  if (up.lengthSq() < 1e-8) return new Quaternion()
  return new Quaternion().setFromUnitVectors(up.normalize(), new Vector3(0, 0, 1))
}

// An opening that looks down more steeply than this lets crabs drop out on the way up.
const steepestSafe = Math.sin(Math.PI / 6)

/** Indices of the entrances that look downwards while the pot hangs so turned. */
export function entrancesBelow(entrances: readonly Entrance[], turn: Quaternion): number[] {
  return entrances.flatMap((entrance, k) => {
    const bearing = (entrance.bearingDeg * Math.PI) / 180
    const facing = entrance.onTop
      ? new Vector3(0, 0, 1)
      : new Vector3(Math.cos(bearing), -Math.sin(bearing), 0)
    return facing.applyQuaternion(turn).z < -steepestSafe ? [k] : []
  })
}
