import type { PotGeometry } from '@shared/design/geometry/pot-geometry'
import { potGeometry } from '@shared/design/geometry/build'
import { lookOfRope } from '@shared/design/geometry/looks'
import { Quaternion, Vector3 } from 'three'
import { haulTurn } from './haul-pose'
import { partItems, type PartItem } from './part-items'
import { floatAt, haulRopeItem, linePoints, ropeItem } from './rig-items'
import type { SceneModel } from './scene-model'

/** Netting bars drawn at most; finer netting is drawn in bundles that carry the bars as a pattern. */
const mostSegments = 24_000

export interface SceneGeometry {
  readonly geometry: PotGeometry
  readonly items: readonly PartItem[]
  /** Rope from float to pot in the pot's frame, where the whole rig is shown. */
  readonly line: readonly Vector3[]
  /** How the pot turns to hang; no turn in the other modes. */
  readonly hang: Quaternion
}

/** Where the current runs in the pot's own frame, z up. */
export function flowOf(model: SceneModel): Vector3 {
  const bearing = ((model.currentBearingDeg ?? 180) * Math.PI) / 180
  return new Vector3(Math.cos(bearing), -Math.sin(bearing), 0)
}

/** What is drawn for a model: the pot from its design, with rope and float as the mode shows them. */
export function sceneGeometry(model: SceneModel, fold: number): SceneGeometry {
  const { pot, mode, line: rig } = model
  const withFloat = mode !== 'haul' && mode !== 'folded'
  const drawn = potGeometry(pot, { fold, maxSegments: mostSegments, withFloat })
  const look = lookOfRope(pot.rope)
  const ropeRadiusM = (pot.rope?.diameterMm ?? 8) / 2000

  if (mode === 'rig' && rig) {
    const line = linePoints(rig, flowOf(model))
    const end = line[0]
    const geometry = end ? floatAt(drawn, end) : drawn
    return {
      geometry,
      items: [...partItems(geometry, pot), ropeItem(line, ropeRadiusM, look)],
      line,
      hang: new Quaternion(),
    }
  }
  if (mode === 'haul') {
    const hang = haulTurn(drawn.haulPoint, model.centreOfGravityM ?? middleOf(drawn))
    const up = new Vector3(0, 0, 1).applyQuaternion(hang.clone().invert())
    const rope = haulRopeItem(new Vector3(...drawn.haulPoint), up, widthOf(drawn) * 0.7, ropeRadiusM, look)
    return { geometry: drawn, items: [...partItems(drawn, pot), rope], line: [], hang }
  }
  return { geometry: drawn, items: partItems(drawn, pot), line: [], hang: new Quaternion() }
}

/** Middle of the pot's box, where its centre of gravity is not given. */
function middleOf({ bounds: { min, max } }: PotGeometry): readonly [number, number, number] {
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2]
}

/** Widest extent of the pot over the ground [m]. */
export function widthOf({ bounds: { min, max } }: PotGeometry): number {
  return Math.max(max[0] - min[0], max[1] - min[1])
}
