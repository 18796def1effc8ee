import { InterleavedBufferAttribute, Vector3, type Mesh } from 'three'

const most = 60

/** A few dozen points spread over a mesh, in the world: enough to frame it closely. */
export function outlineOf(mesh: Mesh): Vector3[] {
  const starts = mesh.geometry.getAttribute('start')
  const places =
    starts instanceof InterleavedBufferAttribute ? starts : mesh.geometry.getAttribute('position')
  const stride = Math.max(1, Math.floor(places.count / most))
  const points: Vector3[] = []
  for (let k = 0; k < places.count; k += stride) {
    points.push(new Vector3().fromBufferAttribute(places, k).applyMatrix4(mesh.matrixWorld))
  }
  return points
}
