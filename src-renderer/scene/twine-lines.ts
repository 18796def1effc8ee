import {
  InstancedBufferAttribute,
  InstancedBufferGeometry,
  InstancedInterleavedBuffer,
  InterleavedBufferAttribute,
  BufferAttribute,
  Box3,
  Sphere,
  Vector3,
} from 'three'

// Across (-1, 1) and along (0, 1).
const strip = new Float32Array([-1, 0, 0, 1, 0, 0, -1, 1, 0, 1, 1, 0])
const stripFaces = [0, 1, 2, 2, 1, 3]

/**
 * Geometry for a set of straight twine bars, six numbers each. The numbers go to the graphics card as they are.
 * `facing` gives the panel's normal at each bar where a bundle has to lie in its panel.
 */
export function twineGeometry(segments: Float32Array, facing?: Float32Array): InstancedBufferGeometry {
  const geometry = new InstancedBufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(strip, 3))
  geometry.setIndex(stripFaces)
  const pairs = new InstancedInterleavedBuffer(segments, 6, 1)
  geometry.setAttribute('start', new InterleavedBufferAttribute(pairs, 3, 0))
  geometry.setAttribute('end', new InterleavedBufferAttribute(pairs, 3, 3))
  if (facing) geometry.setAttribute('facing', new InstancedBufferAttribute(facing, 3))
  geometry.instanceCount = segments.length / 6
  const box = new Box3()
  const point = new Vector3()
  for (let k = 0; k + 2 < segments.length; k += 3) {
    box.expandByPoint(point.set(segments[k] ?? 0, segments[k + 1] ?? 0, segments[k + 2] ?? 0))
  }
  geometry.boundingBox = box
  geometry.boundingSphere = box.getBoundingSphere(new Sphere())
  return geometry
}
