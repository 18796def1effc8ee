import type { MeshForm } from '../netting-panels'
import { slantLength, wallAt, type TurnedShape } from '../shape'
import { insideHole, piecesOutside, type Hole } from './holes'
import type { Point } from './pot-geometry'
import { SegmentWriter } from './segment-writer'

/** A hole in a turned wall: on the flat about its own centre, `angleRad` round the pot. */
export interface WallHole extends Hole {
  readonly angleRad: number
  /** Radius at its centre, which turns angle into width [m]. */
  readonly radiusM: number
}

// Straight pieces that follow the curve to within a degree or two of what the eye can tell.
const turnPerPiece = 0.13
const domePieces = 10
const ringPieces = 72

/**
 * Netting of a turned wall, each run of bars followed from base to top as a chain of straight pieces.
 *
 * Diamond: N = round(2 π r/(2 a E₁)) runs each way that climb at E₂/E₁; the count round stays the same to the top,
 * so the meshes narrow with the wall. Square: N uprights a apart and rings a apart.
 *
 * @param built  outline as built, which sets the count of meshes
 * @param drawn  outline as drawn: lower when folded
 * @param sector share of the wall from the base that is covered, 0-1
 */
export function turnedMesh(
  built: TurnedShape,
  drawn: TurnedShape,
  form: MeshForm,
  holes: readonly WallHole[],
  thinning: number,
  sector = 1,
): Float32Array {
  const writer = new SegmentWriter()
  const run = (angle: number, climb: number) => upRun(drawn, holes, angle, climb, sector, writer)
  const count = Math.max(3, Math.round(meshesRound(built, form) / thinning))
  const turn = (2 * Math.PI) / count
  if (form.square) {
    for (let i = 0; i < count; i++) run(i * turn, 0)
    const rings = Math.floor((slantLength(built) * sector) / (form.barM * thinning))
    for (let j = 0; j <= rings; j++) ring(drawn, holes, (j * sector) / Math.max(1, rings), writer)
  } else {
    const climb = turnOfRun(built, form)
    for (let i = 0; i < count; i++) {
      run(i * turn, climb)
      run(i * turn, -climb)
    }
  }
  return writer.finish()
}

/** Segments drawn at full density. */
export function turnedSegmentCount(shape: TurnedShape, form: MeshForm): number {
  const round = meshesRound(shape, form)
  return form.square
    ? round * pieces(shape, 0) + (slantLength(shape) / form.barM) * ringPieces
    : 2 * round * pieces(shape, turnOfRun(shape, form))
}

/** Meshes round the wall, counted at its wider end. */
const meshesRound = (shape: TurnedShape, form: MeshForm): number =>
  Math.max(3, Math.round((2 * Math.PI * Math.max(shape.baseRadiusM, shape.topRadiusM)) / form.acrossM))

/** How far a diamond run turns about the axis on its way to the top [rad]. */
const turnOfRun = (shape: TurnedShape, form: MeshForm) =>
  (slantLength(shape) * form.e1) / form.e2 / Math.max(shape.baseRadiusM, shape.topRadiusM)

const pieces = (shape: TurnedShape, turn: number) =>
  Math.max(shape.dome ? domePieces : 1, Math.ceil(Math.abs(turn) / turnPerPiece))

function upRun(
  shape: TurnedShape,
  holes: readonly WallHole[],
  start: number,
  turn: number,
  sector: number,
  writer: SegmentWriter,
): void {
  const steps = pieces(shape, turn * sector)
  for (let i = 0; i < steps; i++) {
    const v0 = (sector * i) / steps
    const v1 = (sector * (i + 1)) / steps
    piece(shape, holes, start + turn * v0, v0, start + turn * v1, v1, writer)
  }
}

function ring(shape: TurnedShape, holes: readonly WallHole[], v: number, writer: SegmentWriter): void {
  const turn = (2 * Math.PI) / ringPieces
  for (let i = 0; i < ringPieces; i++) piece(shape, holes, i * turn, v, (i + 1) * turn, v, writer)
}

function piece(
  shape: TurnedShape,
  holes: readonly WallHole[],
  angle0: number,
  v0: number,
  angle1: number,
  v1: number,
  writer: SegmentWriter,
): void {
  const from = wallAt(shape, v0)
  const to = wallAt(shape, v1)
  const a = onCircle(from.r, angle0, from.z)
  const b = onCircle(to.r, angle1, to.z)
  const cut = piecesOutside(holes, (hole) => {
    const away = wrap(angle0 - hole.angleRad)
    return insideHole(hole, away * hole.radiusM, from.z, (away + angle1 - angle0) * hole.radiusM, to.z)
  })
  for (const [s, t] of cut) writer.add(between(a, b, s), between(a, b, t))
}

/** A point on a level circle about the axis. */
export const onCircle = (r: number, angle: number, z: number): Point => [
  r * Math.cos(angle),
  r * Math.sin(angle),
  z,
]

export const between = (a: Point, b: Point, t: number): Point => [
  a[0] + (b[0] - a[0]) * t,
  a[1] + (b[1] - a[1]) * t,
  a[2] + (b[2] - a[2]) * t,
]

/** An angle brought to -π..π. */
const wrap = (angle: number): number => angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))
