import { BufferAttribute, BufferGeometry, Vector3 } from 'three'

/**
 * A round bar along a centre line, with flat ends unless it closes on itself. Its frame is carried along the line
 * without twist; on a closed line what twist is left over is spread evenly. Texture runs round (u) and along in bar
 * diameters (v), so that a lay of rope keeps its proportion at any length.
 */
export function tubeGeometry(
  points: Float32Array,
  radius: number,
  closed: boolean,
  sides: number,
): BufferGeometry {
  const line = readLine(points, closed)
  const tangents = line.map((_, k) => tangentAt(line, k, closed))
  const normals = carryNormals(tangents, closed)
  const rows = closed ? line.length + 1 : line.length
  const ring = sides + 1
  const count = rows * ring + (closed ? 0 : 2 * (ring + 1))
  const position = new Float32Array(count * 3)
  const normal = new Float32Array(count * 3)
  const uv = new Float32Array(count * 2)
  const index = new Uint32Array((rows - 1) * sides * 6 + (closed ? 0 : 2 * sides * 3))
  const turns = Array.from({ length: ring }, (_, s) => (s / sides) * Math.PI * 2)
  const cosines = turns.map(Math.cos)
  const sines = turns.map(Math.sin)
  const direction = new Vector3()
  const side = new Vector3()
  let travelled = 0
  let slot = 0
  let corner = 0

  const put = (centre: Vector3, reach: number, facing: Vector3, u: number, v: number) => {
    position[slot * 3] = centre.x + direction.x * reach
    position[slot * 3 + 1] = centre.y + direction.y * reach
    position[slot * 3 + 2] = centre.z + direction.z * reach
    normal[slot * 3] = facing.x
    normal[slot * 3 + 1] = facing.y
    normal[slot * 3 + 2] = facing.z
    uv[slot * 2] = u
    uv[slot * 2 + 1] = v
    return slot++
  }
  const triangle = (a: number, b: number, c: number) => {
    index[corner++] = a
    index[corner++] = b
    index[corner++] = c
  }
  /** Turns `direction` once round a row, and calls back at every step. */
  const goRound = (row: number, step: (s: number) => void) => {
    const along = tangents[row % line.length]
    const start = normals[row] ?? normals[row % line.length]
    if (!along || !start) return
    side.crossVectors(along, start)
    for (let s = 0; s <= sides; s++) {
      direction
        .copy(start)
        .multiplyScalar(cosines[s] ?? 0)
        .addScaledVector(side, sines[s] ?? 0)
      step(s)
    }
  }

  for (let row = 0; row < rows; row++) {
    const centre = line[row % line.length]
    const before = line[(row - 1 + line.length) % line.length]
    if (!centre || !before) continue
    if (row > 0) travelled += centre.distanceTo(before)
    goRound(row, (s) => put(centre, radius, direction, s / sides, travelled / (2 * radius)))
  }
  for (let row = 0; row + 1 < rows; row++) {
    for (let s = 0; s < sides; s++) {
      const a = row * ring + s
      triangle(a, a + ring, a + 1)
      triangle(a + 1, a + ring, a + ring + 1)
    }
  }
  if (!closed) {
    for (const [row, sign] of [
      [0, -1],
      [line.length - 1, 1],
    ] as const) {
      const centre = line[row]
      const tangent = tangents[row]
      if (!centre || !tangent) continue
      const facing = tangent.clone().multiplyScalar(sign)
      const middle = put(centre, 0, facing, 0.5, 0)
      goRound(row, (s) => {
        const rim = put(centre, radius, facing, s / sides, 0)
        if (s > 0) triangle(middle, sign > 0 ? rim - 1 : rim, sign > 0 ? rim : rim - 1)
      })
    }
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(position, 3))
  geometry.setAttribute('normal', new BufferAttribute(normal, 3))
  geometry.setAttribute('uv', new BufferAttribute(uv, 2))
  geometry.setIndex(new BufferAttribute(index, 1))
  return geometry
}

/** Centre points without repeats, which would leave a tangent undefined. */
function readLine(points: Float32Array, closed: boolean): Vector3[] {
  const line: Vector3[] = []
  for (let k = 0; k + 2 < points.length; k += 3) {
    const point = new Vector3(points[k], points[k + 1], points[k + 2])
    const last = line.at(-1)
    if (!last || last.distanceToSquared(point) > 1e-12) line.push(point)
  }
  const first = line[0]
  const last = line.at(-1)
  if (closed && line.length > 2 && first && last && first.distanceToSquared(last) < 1e-12) line.pop()
  return line
}

function tangentAt(line: readonly Vector3[], k: number, closed: boolean): Vector3 {
  const n = line.length
  const before = closed ? line[(k - 1 + n) % n] : line[Math.max(0, k - 1)]
  const after = closed ? line[(k + 1) % n] : line[Math.min(n - 1, k + 1)]
  if (!before || !after) return new Vector3(1, 0, 0)
  return new Vector3().subVectors(after, before).normalize()
}

/** One normal a row; a closed line has one more row than points, so that the seam meets itself. */
function carryNormals(tangents: readonly Vector3[], closed: boolean): Vector3[] {
  const first = tangents[0]
  if (!first) return []
  const normals = [Math.abs(first.z) < 0.9 ? new Vector3(0, 0, 1) : new Vector3(1, 0, 0)]
  normals[0]?.addScaledVector(first, -(normals[0]?.dot(first) ?? 0)).normalize()
  const rows = closed ? tangents.length + 1 : tangents.length
  for (let row = 1; row < rows; row++) {
    const tangent = tangents[row % tangents.length] ?? first
    const carried = (normals[row - 1] ?? new Vector3()).clone()
    carried.addScaledVector(tangent, -carried.dot(tangent))
    normals.push(carried.normalize())
  }
  const start = normals[0]
  const finish = normals.at(-1)
  if (!closed || !start || !finish) return normals
  const side = new Vector3().crossVectors(first, start)
  const twist = Math.atan2(finish.dot(side), finish.dot(start))
  return normals.map((normal, row) => {
    const tangent = tangents[row % tangents.length] ?? first
    return normal.clone().applyAxisAngle(tangent, (-twist * row) / (rows - 1))
  })
}
