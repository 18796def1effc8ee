import type { Netting } from '@shared/schema/pot'
import type { EntranceShape } from '../entrance-shape'
import { meshForm } from '../netting-panels'
import type { PotShape } from '../shape'
import { mm } from '../si'
import { pointsOf, wallPointBeside } from './curves'
import { lookOfNetting } from './looks'
import type { Opening } from './openings'
import type { MeshLines, Point, Tube } from './pot-geometry'
import { SegmentWriter } from './segment-writer'
import { between } from './turned-mesh'

const hoopRadiusM = mm(4) / 2
const loopSteps = 8

/** The loop round an opening, from the pot's own outside: bottom left, bottom right, top right, top left. */
export function openingLoop(opening: Opening, drawn: PotShape, press: number): Point[] {
  if (opening.face !== 'wall') return levelLoop(opening, opening.face === 'top' ? drawn.heightM : 0)
  const z = opening.placeM * press
  const half = (opening.heightM * press) / 2
  const at = (across: number, up: number) =>
    wallPointBeside(drawn, opening.angleRad, across * (opening.widthM / 2), z + up * half)
  return loopOf(at, opening.round)
}

function levelLoop(opening: Opening, z: number): Point[] {
  const cos = Math.cos(opening.angleRad)
  const sin = Math.sin(opening.angleRad)
  const at = (across: number, up: number): Point => {
    const out = opening.placeM + (up * opening.heightM) / 2
    const beside = (across * opening.widthM) / 2
    return [out * cos - beside * sin, out * sin + beside * cos, z]
  }
  return loopOf(at, opening.round)
}

function loopOf(at: (across: number, up: number) => Point, round: boolean): Point[] {
  if (round)
    return Array.from({ length: 4 * loopSteps }, (_, i) => {
      const roll = (2 * Math.PI * i) / (4 * loopSteps)
      return at(Math.cos(roll), Math.sin(roll))
    })
  const corners = [
    [-1, -1],
    [1, -1],
    [1, 1],
    [-1, 1],
  ] as const
  return corners.flatMap(([a, b], i) => {
    const [c, d] = corners[(i + 1) % 4] ?? corners[0]
    return Array.from({ length: loopSteps }, (_, k) => {
      const t = k / loopSteps
      return at(a + (c - a) * t, b + (d - b) * t)
    })
  })
}

export interface EntranceDrawing {
  readonly tubes: Tube[]
  readonly meshes: MeshLines[]
}

/**
 * One entrance: its hoop, and for a funnel the eye inside and the netting between them; for a one-way entrance
 * its hanging fingers.
 */
export function entranceDrawing(
  entrance: EntranceShape,
  opening: Opening,
  netting: Netting | undefined,
  drawn: PotShape,
  press: number,
): EntranceDrawing {
  const mouth = openingLoop(opening, drawn, press)
  const hoop = tube(entrance.index, mouth, true)
  if (entrance.depthM > 0) {
    const eye = eyeLoop(mouth, entrance, opening)
    const meshes = netting ? [funnelMesh(entrance, mouth, eye, netting)] : []
    return { tubes: [hoop, tube(entrance.index, eye, true)], meshes }
  }
  return { tubes: [hoop, ...fingers(entrance, mouth)], meshes: [] }
}

const tube = (index: number, loop: readonly Point[], closed: boolean, radiusM = hoopRadiusM): Tube => ({
  part: 'entrances',
  index,
  look: 'steel-galvanised',
  radiusM,
  points: pointsOf(loop),
  closed,
})

/** The mouth narrowed about its middle and carried inwards. */
function eyeLoop(mouth: readonly Point[], entrance: EntranceShape, opening: Opening): Point[] {
  const middle = meanPoint(mouth)
  const inward: Point =
    opening.face === 'wall'
      ? [-Math.cos(opening.angleRad), -Math.sin(opening.angleRad), 0]
      : [0, 0, opening.face === 'top' ? -1 : 1]
  const narrow = (entrance.eyeWidthM / entrance.widthM + entrance.eyeHeightM / entrance.heightM) / 2
  return mouth.map((point) => {
    const [x, y, z] = between(middle, point, narrow)
    // The eye is flat, while the mouth follows the wall.
    const [mx, my, mz] = middle
    const bulge = (x - mx) * inward[0] + (y - my) * inward[1] + (z - mz) * inward[2]
    const depth = entrance.depthM - bulge
    return [x + inward[0] * depth, y + inward[1] * depth, z + inward[2] * depth]
  })
}

function meanPoint(points: readonly Point[]): Point {
  const sum = points.reduce<[number, number, number]>(
    (total, point) => [total[0] + point[0], total[1] + point[1], total[2] + point[2]],
    [0, 0, 0],
  )
  return [sum[0] / points.length, sum[1] / points.length, sum[2] / points.length]
}

const mostRunsRound = 120
const mostRows = 40

/** Diamonds between mouth and eye; both loops run the same way round, so a run links their points in step. */
function funnelMesh(
  entrance: EntranceShape,
  mouth: readonly Point[],
  eye: readonly Point[],
  netting: Netting,
): MeshLines {
  const form = meshForm(netting)
  const girth = 2 * (entrance.widthM + entrance.heightM)
  const thinning = Math.max(
    1,
    Math.ceil(girth / form.acrossM / mostRunsRound),
    Math.ceil((2 * entrance.depthM) / form.downM / mostRows),
  )
  const around = Math.max(6, Math.round(girth / form.acrossM / thinning))
  const rows = Math.max(2, Math.round((2 * entrance.depthM) / form.downM / thinning))
  const at = (round: number, row: number) =>
    between(onLoop(mouth, round / around), onLoop(eye, round / around), row / rows)
  const writer = new SegmentWriter()
  for (let row = 0; row < rows; row++)
    for (let i = 0; i < around; i++) {
      const here = i + (row % 2) / 2
      writer.add(at(here, row), at(here + 0.5, row + 1))
      writer.add(at(here, row), at(here - 0.5, row + 1))
    }
  return {
    part: 'entrances',
    index: entrance.index,
    panel: 'funnel',
    look: lookOfNetting(netting),
    diameterM: form.twineM,
    segments: writer.finish(),
    thinning,
  }
}

function onLoop(loop: readonly Point[], share: number): Point {
  const place = (share - Math.floor(share)) * loop.length
  const before = Math.floor(place) % loop.length
  const a = loop[before]
  const b = loop[(before + 1) % loop.length]
  return a && b ? between(a, b, place - Math.floor(place)) : [0, 0, 0]
}

/** Fingers that hang from the upper edge of a one-way entrance and swing inwards only. */
function fingers(entrance: EntranceShape, mouth: readonly Point[]): Tube[] {
  if (entrance.kind !== 'one-way') return []
  const count = Math.max(3, Math.min(12, Math.round(entrance.widthM / 0.04)))
  return Array.from({ length: count }, (_, i) => {
    const across = (i + 1) / (count + 1)
    const foot = onLoop(mouth, across / 4)
    const head = onLoop(mouth, (3 - across) / 4)
    return tube(entrance.index, [head, between(foot, head, 0.03)], false, mm(1.5))
  })
}
