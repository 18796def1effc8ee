import type { Block, Lathe } from '@shared/design/geometry/pot-geometry'
import { LatheGeometry, Matrix4, Quaternion, Vector2, Vector3, type BufferGeometry } from 'three'
import { RoundedBoxGeometry } from 'three/addons/geometries/RoundedBoxGeometry.js'

const upright = new Vector3(0, 1, 0)

/** A body turned about its axis. The texture's v follows the axis, so that paint bands lie square to it. */
export function latheGeometry(lathe: Lathe): BufferGeometry {
  const outline: Vector2[] = []
  for (let k = 0; k + 1 < lathe.profile.length; k += 2) {
    outline.push(new Vector2(Math.max(0, lathe.profile[k] ?? 0), lathe.profile[k + 1] ?? 0))
  }
  const geometry = new LatheGeometry(outline, 48)
  const low = Math.min(...outline.map((point) => point.y))
  const high = Math.max(...outline.map((point) => point.y))
  const position = geometry.getAttribute('position')
  const uv = geometry.getAttribute('uv')
  for (let k = 0; k < position.count; k++) uv.setY(k, (position.getY(k) - low) / (high - low || 1))
  const turn = new Quaternion().setFromUnitVectors(upright, new Vector3(...lathe.axis).normalize())
  return geometry.applyMatrix4(new Matrix4().compose(new Vector3(...lathe.at), turn, new Vector3(1, 1, 1)))
}

/** A block with its edges broken, turned about the upright axis. */
export function blockGeometry(block: Block): BufferGeometry {
  const [length, width, height] = block.sizeM
  const soft = block.look === 'bait' ? 0.42 : 0.12
  const edge = Math.min(length, width, height) * soft
  const geometry = new RoundedBoxGeometry(length, width, height, 4, edge)
  return geometry.rotateZ(block.turnRad).translate(...block.centre)
}
