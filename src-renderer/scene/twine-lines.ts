import {
  Box3,
  BufferAttribute,
  BufferGeometry,
  InterleavedBuffer,
  InterleavedBufferAttribute,
  Sphere,
  Vector3,
} from 'three'

/** Corners of a bar's strip: across (-1, 1) and along (0, 1). */
const corners = [-1, 0, 1, 0, -1, 1, 1, 1]
const faces = [0, 1, 2, 2, 1, 3]
/** Both ends of the bar and the corner's own place on its strip. */
const numbersPerCorner = 8
const numbersPerBar = 4 * numbersPerCorner

/** The bars of a line through points, three numbers each: six numbers a bar, as twine is drawn. */
export function barsAlong(points: Float32Array, closed: boolean): Float32Array {
  const count = points.length / 3
  const bars = new Float32Array(6 * Math.max(0, closed ? count : count - 1))
  for (let k = 0; k < bars.length; k += 6) {
    const next = (k / 2 + 3) % points.length
    bars.set(points.subarray(k / 2, k / 2 + 3), k)
    bars.set(points.subarray(next, next + 3), k + 3)
  }
  return bars
}

/**
 * Geometry for a set of straight twine bars, six numbers each. `facing` gives the panel's normal at each bar where a
 * bundle has to lie in its panel. Every bar has four corners of its own: to draw one small strip many times over costs
 * a card more, and a machine without one many times more.
 */
export function twineGeometry(segments: Float32Array, facing?: Float32Array): BufferGeometry {
  const bars = segments.length / 6
  const numbers = new Float32Array(bars * numbersPerBar)
  const index = new Uint32Array(bars * faces.length)
  for (let bar = 0; bar < bars; bar++) {
    const ends = segments.subarray(bar * 6, bar * 6 + 6)
    for (let corner = 0; corner < 4; corner++) {
      const at = (bar * 4 + corner) * numbersPerCorner
      numbers.set(ends, at)
      numbers[at + 6] = corners[corner * 2] ?? 0
      numbers[at + 7] = corners[corner * 2 + 1] ?? 0
    }
    faces.forEach((corner, k) => (index[bar * faces.length + k] = bar * 4 + corner))
  }
  const buffer = new InterleavedBuffer(numbers, numbersPerCorner)
  const geometry = new BufferGeometry()
  geometry.setIndex(new BufferAttribute(index, 1))
  geometry.setAttribute('start', new InterleavedBufferAttribute(buffer, 3, 0))
  geometry.setAttribute('end', new InterleavedBufferAttribute(buffer, 3, 3))
  geometry.setAttribute('position', new InterleavedBufferAttribute(buffer, 2, 6))
  if (facing) geometry.setAttribute('facing', new BufferAttribute(fourTimes(facing), 3))
  const box = new Box3()
  const point = new Vector3()
  for (let k = 0; k + 2 < segments.length; k += 3) {
    box.expandByPoint(point.set(segments[k] ?? 0, segments[k + 1] ?? 0, segments[k + 2] ?? 0))
  }
  geometry.boundingBox = box
  geometry.boundingSphere = box.getBoundingSphere(new Sphere())
  return geometry
}

/** Hands over both ends of every bar of a geometry of twine, in vectors that are used again for the next. */
export function forEachBar(geometry: BufferGeometry, visit: (from: Vector3, to: Vector3) => void): void {
  const start = geometry.getAttribute('start')
  const end = geometry.getAttribute('end')
  const from = new Vector3()
  const to = new Vector3()
  for (let corner = 0; corner < start.count; corner += 4)
    visit(from.fromBufferAttribute(start, corner), to.fromBufferAttribute(end, corner))
}

/** Each set of three numbers for all four corners of a bar. */
function fourTimes(perBar: Float32Array): Float32Array {
  const perCorner = new Float32Array(perBar.length * 4)
  for (let k = 0; k < perBar.length; k += 3)
    for (let corner = 0; corner < 4; corner++) perCorner.set(perBar.subarray(k, k + 3), k * 4 + corner * 3)
  return perCorner
}
