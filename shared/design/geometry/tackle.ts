import type { Pot } from '@shared/schema/pot'
import { haulPoint } from '../haul-point'
import { baitPlace } from '../part-masses'
import { reachAt, type PotShape } from '../shape'
import { angleOfBearing, degrees, mm } from '../si'
import { circle, pointsOf, wallPoint } from './curves'
import { floatProfile } from './float-profile'
import { lookOfRope } from './looks'
import type { Block, Lathe, Point, Tube } from './pot-geometry'
import { between, onCircle } from './turned-mesh'

export interface Tackle {
  readonly tubes: Tube[]
  readonly lathes: Lathe[]
  readonly blocks: Block[]
  /** Where the rope leaves the bridle. */
  readonly apex: Point
  readonly floatAt: Point
}

/** Bridle, the start of the rope, the float over the pot, and the tag on the bridle. */
export function tackleOf(pot: Pot, drawn: PotShape, withFloat: boolean): Tackle {
  const apex = apexOf(pot, drawn)
  const floatRadius = mm(pot.float?.diameterMm ?? 0) / 2
  const floatAt: Point = [apex[0] * 1.05, apex[1] * 1.05, apex[2] + ropeShownM + floatRadius]
  const tubes = pot.bridle ? bridleLegs(pot, drawn, apex) : []
  if (pot.rope && withFloat) tubes.push(ropeStart(pot, apex, floatAt, floatRadius))
  const lathes: Lathe[] = pot.float && withFloat ? [floatBody(pot, floatAt)] : []
  const blocks: Block[] = pot.marks?.tag ? [tag(apex)] : []
  return { tubes, lathes, blocks, apex, floatAt }
}

/** Length of rope drawn between the bridle and the float; the true length does not fit in the picture. */
const ropeShownM = 0.2
const legSpreadDeg = 34

function apexOf(pot: Pot, shape: PotShape): Point {
  const haul = haulPoint(pot, shape)
  if (haul.central) return haul.position
  const [x, y, z] = haul.position
  return [x * 1.08, y * 1.08, z + 0.35 * Math.hypot(x, y)]
}

function bridleLegs(pot: Pot, shape: PotShape, apex: Point): Tube[] {
  const legs = pot.bridle?.legs ?? 0
  const haul = haulPoint(pot, shape)
  const z = haul.central ? shape.heightM : haul.heightM
  return Array.from({ length: legs }, (_, i): Tube => {
    const bearing = haul.central
      ? (pot.bridle?.bearingDeg ?? 0) + (360 * i) / legs
      : (pot.bridle?.bearingDeg ?? 0) + (legs > 1 ? legSpreadDeg * ((2 * i) / (legs - 1) - 1) : 0)
    return {
      part: 'bridle',
      index: i,
      look: lookOfRope(pot.rope),
      radiusM: ropeRadius(pot),
      points: pointsOf([wallPoint(shape, angleOfBearing(bearing), z), apex]),
      closed: false,
    }
  })
}

const ropeRadius = (pot: Pot) => mm(pot.rope?.diameterMm ?? 8) / 2

function ropeStart(pot: Pot, apex: Point, floatAt: Point, floatRadius: number): Tube {
  const under: Point = [floatAt[0], floatAt[1], floatAt[2] - floatRadius]
  const sway = 0.05
  const steps = 16
  return {
    part: 'rope',
    look: lookOfRope(pot.rope),
    radiusM: ropeRadius(pot),
    points: pointsOf(
      Array.from({ length: steps + 1 }, (_, i) => {
        const t = i / steps
        const [x, y, z] = between(apex, under, t)
        const aside = sway * Math.sin(2 * Math.PI * t) * (1 - t)
        return [x + aside, y - aside, z] as const
      }),
    ),
    closed: false,
  }
}

function floatBody(pot: Pot, at: Point): Lathe {
  return {
    part: 'float',
    look: 'float',
    profile: pot.float ? floatProfile(pot.float) : new Float32Array(),
    at,
    axis: [0, 0, 1],
    colours: pot.float?.colours ?? [],
    pattern: pot.float?.pattern ?? 'solid',
  }
}

const tag = (apex: Point): Block => ({
  part: 'marks',
  look: 'tag',
  centre: [apex[0], apex[1], apex[2] - mm(60)],
  sizeM: [mm(60), mm(3), mm(40)],
  turnRad: 0,
})

/** Bait in its holder, and what holds it. */
export function baitParts(pot: Pot, shape: PotShape, size: { diameterM: number; heightM: number }) {
  const tubes: Tube[] = []
  const lathes: Lathe[] = []
  if (!pot.bait) return { tubes, lathes, at: undefined }
  const [x, y, z] = baitPlace(pot, shape)
  const half = Math.min(size.heightM, shape.heightM) / 2
  const r = size.diameterM / 2
  const top = shape.heightM
  // The bait stays inside the pot: it hangs no higher than the top allows, and rests on the base at lowest.
  const middle = Math.min(Math.max(z, half), Math.max(half, top - half))
  const at: Point = [x, y, middle]
  if (pot.bait.massKg > 0 || pot.bait.holder === 'jar')
    lathes.push({
      part: 'bait',
      look: pot.bait.holder === 'jar' ? 'plastic' : 'bait',
      profile: capsule(r * 0.8, half * 0.85),
      at,
      axis: [0, 0, 1],
      colours: [],
      pattern: 'solid',
    })
  if (pot.bait.holder === 'wire-basket') tubes.push(...basket(at, r, half))
  if (pot.bait.holder !== 'wire-basket' || middle - half > 0.01) tubes.push(hanger(at, half, top))
  return { tubes, lathes, at }
}

const hanger = (at: Point, half: number, top: number): Tube => ({
  part: 'bait',
  look: 'steel-galvanised',
  radiusM: mm(1.5),
  points: pointsOf([
    [at[0], at[1], at[2] + half * 0.8],
    [at[0], at[1], Math.max(top, at[2] + half * 0.8 + 0.01)],
  ]),
  closed: false,
})

const basketRings = 4
const basketBars = 10

function basket([x, y, z]: Point, r: number, half: number): Tube[] {
  const bar = { part: 'bait', look: 'wire-galvanised', radiusM: mm(1) } as const
  const rings = Array.from({ length: basketRings }, (_, i): Tube => {
    const level = z - half + (2 * half * i) / (basketRings - 1)
    return { ...bar, points: circle([x, y, level], r, 20), closed: true }
  })
  const uprights = Array.from({ length: basketBars }, (_, i): Tube => {
    const [dx, dy] = onCircle(r, degrees((360 * i) / basketBars), 0)
    return {
      ...bar,
      points: pointsOf([
        [x + dx, y + dy, z - half],
        [x + dx, y + dy, z + half],
      ]),
      closed: false,
    }
  })
  return [...rings, ...uprights]
}

/** Radius and height pairs of a rounded lump, from -half to +half. */
function capsule(r: number, half: number): Float32Array {
  const steps = 12
  return Float32Array.from(
    Array.from({ length: steps + 1 }, (_, i) => {
      const t = (Math.PI * i) / steps
      return [r * Math.sin(t) ** 0.7, -half * Math.cos(t)]
    }).flat(),
  )
}

/** Ballast: bars beside each other on the base, or a ring of lead where it is heavy; sized by volume. */
export function ballastBlocks(
  pot: Pot,
  shape: PotShape,
  volumes: readonly number[],
  looks: readonly Block['look'][],
): Block[] {
  const pieces = pot.ballast ?? []
  return pieces.flatMap((piece, index): Block[] => {
    const volume = volumes[index] ?? 0
    if (volume <= 0) return []
    // A bar four times as long as it is thick.
    const side = Math.cbrt(volume / 4)
    const angle = Math.PI / 4 + (2 * Math.PI * index) / pieces.length
    const out = Math.max(0, reachAt(shape, angle, 0) * 0.85 - side)
    const [x, y] = onCircle(out, angle, 0)
    return [
      {
        part: 'ballast',
        index,
        look: looks[index] ?? 'lead',
        centre: [x, y, Math.max(side / 2, mm(piece.heightMm))],
        sizeM: [4 * side, side, side],
        turnRad: angle + Math.PI / 2,
      },
    ]
  })
}
