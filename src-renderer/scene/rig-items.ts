import type { Look, PotGeometry } from '@shared/design/geometry/pot-geometry'
import { Vector3 } from 'three'
import { hashOf } from './hash'
import type { PartItem } from './part-items'
import type { RigLine } from './scene-model'
import { tubeGeometry } from './tube-geometry'
import { barsAlong, twineGeometry } from './twine-lines'

/** Places of the line in the pot's own frame, from the float to the pot; `flow` points where the current runs. */
export function linePoints(line: RigLine, flow: Vector3): Vector3[] {
  const points: Vector3[] = []
  for (let k = 0; k + 1 < line.shape.length; k += 2) {
    const along = line.shape[k] ?? 0
    points.push(new Vector3(flow.x * along, flow.y * along, line.shape[k + 1] ?? 0))
  }
  return points
}

/** The whole rope to scale. Never thinner than two pixels, or it could not be seen from where its end is in view. */
export function ropeItem(points: readonly Vector3[], radiusM: number, look: Look): PartItem {
  const segments = barsAlong(Float32Array.from(points.flatMap((point) => point.toArray())), false)
  return {
    slot: `rig/rope/${look}`,
    part: 'rope',
    look,
    key: hashOf(segments),
    build: () => twineGeometry(segments),
    twine: { radiusM, lines: 1, pitchM: 1, leastPx: 2.2, lightShare: 1 },
  }
}

/** The rope that a pot hangs by, straight up from its haul point. */
export function haulRopeItem(
  haulPoint: Vector3,
  up: Vector3,
  lengthM: number,
  radiusM: number,
  look: Look,
): PartItem {
  const end = haulPoint.clone().addScaledVector(up, lengthM)
  const points = Float32Array.from([...haulPoint.toArray(), ...end.toArray()])
  return {
    slot: `haul/rope/${look}`,
    part: 'rope',
    look,
    key: hashOf(points, [radiusM]),
    build: () => tubeGeometry(points, radiusM, false, 12),
  }
}

/** A pot's drawing with its float moved to the end of the line. */
export function floatAt(geometry: PotGeometry, place: Vector3): PotGeometry {
  const floats = geometry.lathes.filter(({ part }) => part === 'float')
  const first = floats[0]
  if (!first) return geometry
  const shift = place.clone().sub(new Vector3(...first.at))
  return {
    ...geometry,
    tubes: geometry.tubes.filter(({ part }) => part !== 'rope'),
    lathes: geometry.lathes.map((lathe) =>
      lathe.part === 'float'
        ? { ...lathe, at: [lathe.at[0] + shift.x, lathe.at[1] + shift.y, lathe.at[2] + shift.z] as const }
        : lathe,
    ),
  }
}
