import {
  Matrix4,
  Ray,
  Vector3,
  type BufferGeometry,
  type Intersection,
  type Mesh,
  type Raycaster,
} from 'three'
import { forEachBar } from './twine-lines'

// Share of the distance to the eye within which a bar counts as hit: about three pixels on a common screen.
const reach = 0.0022

/** Lets a ray catch twine strips, whose real shape exists only on the graphics card. */
export function catchTwine(mesh: Mesh<BufferGeometry>): void {
  const inverse = new Matrix4()
  const ray = new Ray()
  const onBar = new Vector3()
  mesh.raycast = (raycaster: Raycaster, hits: Intersection[]) => {
    const sphere = mesh.geometry.boundingSphere
    if (!sphere) return
    ray.copy(raycaster.ray).applyMatrix4(inverse.copy(mesh.matrixWorld).invert())
    if (!ray.intersectsSphere(sphere)) return
    let nearest = Infinity
    forEachBar(mesh.geometry, (from, to) => {
      const squared = ray.distanceSqToSegment(from, to, undefined, onBar)
      const distance = onBar.distanceTo(ray.origin)
      if (distance < nearest && squared < (reach * distance) ** 2) nearest = distance
    })
    if (nearest === Infinity) return
    const point = ray.at(nearest, new Vector3()).applyMatrix4(mesh.matrixWorld)
    hits.push({ distance: nearest, point, object: mesh })
  }
}
