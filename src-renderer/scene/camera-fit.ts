import { Box3, MathUtils, Vector3, type PerspectiveCamera } from 'three'

const margin = 1.1

/** Where to look and from how far, so that every point is inside the picture and the whole sits in its middle. */
export function fitView(
  outline: readonly Vector3[],
  direction: Vector3,
  camera: PerspectiveCamera,
): { target: Vector3; distance: number } {
  const tanUp = Math.tan(MathUtils.degToRad(camera.fov / 2)) / margin
  const up = Math.abs(direction.y) > 0.999 ? new Vector3(0, 0, -1) : new Vector3(0, 1, 0)
  const right = new Vector3().crossVectors(up, direction).normalize()
  const above = new Vector3().crossVectors(direction, right)
  const centre = new Box3().setFromPoints([...outline]).getCenter(new Vector3())
  const seen = (axis: Vector3) =>
    outline.map((point): Seen => {
      const from = point.clone().sub(centre)
      return [from.dot(axis), from.dot(direction)]
    })
  const across = seen(right)
  const height = seen(above)
  const distance = Math.max(0.1, leastDistance(across, tanUp * camera.aspect), leastDistance(height, tanUp))
  const target = centre
    .addScaledVector(right, middleAt(across, distance))
    .addScaledVector(above, middleAt(height, distance))
  return { target, distance }
}

/** A point by its place across the picture and how much nearer it is than the middle. */
type Seen = readonly [place: number, near: number]

/** A nearer point looks farther out, so the eye stands where the outermost on both sides just fit. */
function leastDistance(points: readonly Seen[], tan: number): number {
  const high = Math.max(...points.map(([place, near]) => place + near * tan))
  const low = Math.min(...points.map(([place, near]) => place - near * tan))
  return (high - low) / 2 / tan
}

/** Where to look so that as much is free on one side as on the other, seen from a distance. */
function middleAt(points: readonly Seen[], distance: number): number {
  let middle = 0
  for (let pass = 0; pass < 6; pass++) {
    const slopes = points.map(([place, near]) => (place - middle) / (distance - near))
    middle += (distance * (Math.max(...slopes) + Math.min(...slopes))) / 2
  }
  return middle
}
