import type { Pot } from '@shared/schema/pot'
import { frameMembers, footLengthM, type Member } from '../frame-members'
import { girthAt, type PotShape } from '../shape'
import { helixRound, pointsOf, ringAt, wallPoint } from './curves'
import { lookOfChafe, lookOfMaterial } from './looks'
import type { Point, Tube } from './pot-geometry'
import { between, onCircle } from './turned-mesh'

/**
 * Rings, struts, cross-bars, feet and chafe wraps as tubes with their true bars.
 *
 * @param built outline as built, from which a strut keeps its length
 * @param drawn outline as drawn: lower when folded, and struts lie over
 */
export function frameTubes(pot: Pot, built: PotShape, drawn: PotShape): Tube[] {
  const press = drawn.heightM / built.heightM
  const tubes: Tube[] = []
  for (const member of frameMembers(pot, built)) {
    const bar = { part: member.role, index: member.index, look: lookOfMaterial(member.material) }
    const radiusM = member.diameterM / 2
    for (const { points, closed } of centreLines(member, built, drawn))
      tubes.push({ ...bar, radiusM, points, closed })
    if (member.wrapM > 0)
      for (const z of member.role.endsWith('ring') ? member.heightsM : [])
        tubes.push(wrapTube(pot, member, drawn, z * press))
  }
  return [...tubes, ...feet(pot, drawn)]
}

function centreLines(
  member: Member,
  built: PotShape,
  drawn: PotShape,
): { points: Float32Array; closed: boolean }[] {
  const press = drawn.heightM / built.heightM
  if (member.role === 'strut')
    return Array.from({ length: member.count }, (_, i) => ({
      points: strut(built, drawn, angleOf(i, member.count)),
      closed: false,
    }))
  if (member.role === 'cross-bar')
    return Array.from({ length: member.count }, (_, i) => ({
      points: crossBar(drawn, i, member.count),
      closed: false,
    }))
  // Several rings at one height are laid one on the other.
  return member.heightsM.map((z, i) => ({
    points: ringAt(drawn, z * press + (member.role === 'middle-ring' ? 0 : i * member.diameterM)),
    closed: true,
  }))
}

// Between the entrances at the front and back.
const angleOf = (i: number, count: number) => Math.PI / 4 + (2 * Math.PI * i) / count

/** A strut along the wall; where the pot is pressed down it keeps its length and leans over along the wall. */
function strut(built: PotShape, drawn: PotShape, angle: number): Float32Array {
  const steps = built.kind === 'turned' && built.dome ? 10 : 1
  const foot = wallPoint(drawn, angle, 0)
  const head = wallPoint(built, angle, built.heightM)
  const length = Math.hypot(head[0] - foot[0], head[1] - foot[1], built.heightM)
  const turn = leanTurn(drawn, Math.sqrt(Math.max(0, length ** 2 - drawn.heightM ** 2)))
  return pointsOf(
    Array.from({ length: steps + 1 }, (_, i) => {
      const t = i / steps
      return wallPoint(drawn, angle + turn * t, drawn.heightM * t)
    }),
  )
}

/** Turn about the axis between the ends of a strut that spans a level distance, by the law of cosines [rad]. */
function leanTurn(drawn: PotShape, spanM: number): number {
  const base = drawn.kind === 'turned' ? drawn.baseRadiusM : Math.min(drawn.lengthM, drawn.widthM) / 2
  const top = drawn.kind === 'turned' ? drawn.topRadiusM : base
  const cosine = (base ** 2 + top ** 2 - spanM ** 2) / (2 * base * top)
  return Math.acos(Math.min(1, Math.max(-1, cosine)))
}

function crossBar(shape: PotShape, i: number, count: number): Float32Array {
  if (shape.kind === 'box') {
    const x = (shape.lengthM * (i + 1)) / (count + 1) - shape.lengthM / 2
    return pointsOf([
      [x, -shape.widthM / 2, 0],
      [x, shape.widthM / 2, 0],
    ])
  }
  const angle = Math.PI / 4 + (Math.PI * i) / count
  return pointsOf([onCircle(shape.baseRadiusM, angle, 0), onCircle(shape.baseRadiusM, angle + Math.PI, 0)])
}

const turnsCap = 360

function wrapTube(pot: Pot, member: Member, shape: PotShape, z: number): Tube {
  const look = lookOfChafe(pot)
  const shared = { part: 'chafe', index: member.index, look, closed: true } as const
  if (look === 'hose')
    return { ...shared, radiusM: member.diameterM / 2 + member.wrapM, points: ringAt(shape, z) }
  const turns = Math.min(turnsCap, Math.max(12, Math.round(girthAt(shape, z) / (1.15 * member.wrapM))))
  return {
    ...shared,
    radiusM: member.wrapM / 2,
    points: helixRound(
      (t) => ringPoint(shape, t, z),
      (t) => outward(shape, t),
      (member.diameterM + member.wrapM) / 2,
      turns,
    ),
  }
}

/** A point of the ring at a share of its girth. */
function ringPoint(shape: PotShape, t: number, z: number): Point {
  if (shape.kind === 'turned') return wallPoint(shape, 2 * Math.PI * t, z)
  const corners = ringAt(shape, z)
  const sides = [shape.lengthM, shape.widthM, shape.lengthM, shape.widthM]
  let rest = t * 2 * (shape.lengthM + shape.widthM)
  for (const [i, side] of sides.entries()) {
    if (rest <= side || i === 3) return between(corner(corners, i), corner(corners, (i + 1) % 4), rest / side)
    rest -= side
  }
  return corner(corners, 0)
}

const corner = (ring: Float32Array, i: number): Point => [
  ring[3 * i] ?? 0,
  ring[3 * i + 1] ?? 0,
  ring[3 * i + 2] ?? 0,
]

function outward(shape: PotShape, t: number): readonly [number, number] {
  if (shape.kind === 'turned') return [Math.cos(2 * Math.PI * t), Math.sin(2 * Math.PI * t)]
  const [x, y] = ringPoint(shape, t, 0)
  return Math.abs(Math.abs(x) - shape.lengthM / 2) < 1e-9 ? [Math.sign(x), 0] : [0, Math.sign(y)]
}

function feet(pot: Pot, shape: PotShape): Tube[] {
  const ring = frameMembers(pot, shape).find((member) => member.role === 'base-ring')
  if (!ring) return []
  return Array.from({ length: pot.body.feet }, (_, i): Tube => {
    const [x, y] = wallPoint(shape, angleOf(i, pot.body.feet), 0)
    return {
      part: 'frame',
      look: lookOfMaterial(ring.material),
      radiusM: ring.diameterM / 2,
      points: pointsOf([
        [x, y, 0],
        [x, y, -footLengthM],
      ]),
      closed: false,
    }
  })
}
