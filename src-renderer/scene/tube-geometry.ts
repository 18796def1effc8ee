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
  const capped = !closed
  const count = rows * ring + (capped ? 2 * (ring + 1) : 0)
  const position = new Float32Array(count * 3)
  const normal = new Float32Array(count * 3)
  const uv = new Float32Array(count * 2)
  const index: number[] = []
  const out = new Vector3()
  const side = new Vector3()
  let travelled = 0
  let slot = 0

  const put = (centre: Vector3, direction: Vector3, reach: number, facing: Vector3, u: number, v: number) => {
    position.set(
      [centre.x + direction.x * reach, centre.y + direction.y * reach, centre.z + direction.z * reach],
      slot * 3,
    )
    normal.set([facing.x, facing.y, facing.z], slot * 3)
    uv.set([u, v], slot * 2)
    return slot++
  }
  const around = (row: number, turn: number) => {
    const k = row % line.length
    const n = normals[row] ?? normals[k]
    const t = tangents[k]
    if (n && t) {
      side.crossVectors(t, n)
      out.copy(n).multiplyScalar(Math.cos(turn)).addScaledVector(side, Math.sin(turn))
    }
    return out
  }

  for (let row = 0; row < rows; row++) {
    const centre = line[row % line.length]
    const before = line[(row - 1 + line.length) % line.length]
    if (!centre || !before) continue
    if (row > 0) travelled += centre.distanceTo(before)
    for (let s = 0; s <= sides; s++) {
      const direction = around(row, (s / sides) * Math.PI * 2)
      put(centre, direction, radius, direction, s / sides, travelled / (2 * radius))
    }
  }
  for (let row = 0; row + 1 < rows; row++) {
    for (let s = 0; s < sides; s++) {
      const a = row * ring + s
      index.push(a, a + ring, a + 1, a + 1, a + ring, a + ring + 1)
    }
  }
  if (capped) {
    for (const [row, sign] of [
      [0, -1],
      [line.length - 1, 1],
    ] as const) {
      const centre = line[row]
      const tangent = tangents[row]
      if (!centre || !tangent) continue
      const facing = tangent.clone().multiplyScalar(sign)
      const middle = put(centre, facing, 0, facing, 0.5, 0)
      for (let s = 0; s <= sides; s++) {
        const rim = put(centre, around(row, (s / sides) * Math.PI * 2), radius, facing, s / sides, 0)
        if (s > 0) index.push(middle, ...(sign > 0 ? [rim - 1, rim] : [rim, rim - 1]))
      }
    }
  }
  const geometry = new BufferGeometry()
  geometry.setAttribute('position', new BufferAttribute(position, 3))
  geometry.setAttribute('normal', new BufferAttribute(normal, 3))
  geometry.setAttribute('uv', new BufferAttribute(uv, 2))
  geometry.setIndex(index)
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
