import type { Netting, Pot } from '@shared/schema/pot'
import { doubledShare, hasTopNetting, meshForm, type MeshForm } from '../netting-panels'
import { hasDoubleNetting } from '../frame-members'
import { onEnd } from './curves'
import { wallAt, wallPositionAt, type BoxShape, type PotShape } from '../shape'
import { flatMesh, flatRowCount, type FlatOutline } from './flat-mesh'
import type { Hole } from './holes'
import { lookOfNetting } from './looks'
import type { Opening } from './openings'
import type { MeshLines, PanelName, Point } from './pot-geometry'
import { turnedMesh, turnedSegmentCount, type WallHole } from './turned-mesh'

/**
 * The netting of wall, top and base as lines, holes cut for what opens in them.
 *
 * @param built       outline as built
 * @param drawn       outline as drawn, lower when folded
 * @param maxSegments most segments for all panels together
 */
export function nettingLines(
  pot: Pot,
  netting: Netting,
  built: PotShape,
  drawn: PotShape,
  openings: readonly Opening[],
  maxSegments: number,
): MeshLines[] {
  const form = meshForm(netting)
  const thinning = thinningFor(built, form, maxSegments)
  const cuts = openings.filter((opening) => opening.cuts)
  const press = drawn.heightM / built.heightM
  const look = lookOfNetting(netting)
  const panel = (
    name: PanelName,
    segments: Float32Array,
    part: 'netting' | 'chafe' = 'netting',
  ): MeshLines => ({ part, panel: name, look, diameterM: form.twineM, segments, thinning })

  const meshes: MeshLines[] = []
  if (built.kind === 'turned' && drawn.kind === 'turned') {
    const holes = cuts.filter((o) => o.face === 'wall').map((o) => turnedHole(o, drawn, press))
    meshes.push(panel('wall', turnedMesh(built, drawn, form, holes, thinning)))
    if (hasDoubleNetting(pot))
      meshes.push(
        panel('double', turnedMesh(built, drawn, shifted(form), holes, thinning, doubledShare), 'chafe'),
      )
  } else if (drawn.kind === 'box') {
    for (const face of boxFaces)
      meshes.push(panel(face, boxFaceMesh(drawn, face, form, cuts, press, thinning)))
  }
  meshes.push(panel('base', levelMesh(drawn, 0, 'base', form, cuts, thinning)))
  if (hasTopNetting(pot))
    meshes.push(panel('top', levelMesh(drawn, drawn.heightM, 'top', form, cuts, thinning)))
  return meshes.filter((mesh) => mesh.segments.length > 0)
}

/** A second layer is drawn slightly out of step with the first, so that it shows. */
const shifted = (form: MeshForm): MeshForm => ({ ...form, acrossM: form.acrossM * 0.93 })

function thinningFor(shape: PotShape, form: MeshForm, maxSegments: number): number {
  const flats = [topOutline(shape), baseOutline(shape), ...(shape.kind === 'box' ? sideOutlines(shape) : [])]
  const rows = flats.reduce((sum, outline) => sum + flatRowCount(outline, form), 0)
  const wall = shape.kind === 'turned' ? turnedSegmentCount(shape, form) : 0
  return Math.max(1, Math.ceil((rows + 1.5 * wall) / maxSegments))
}

function turnedHole(opening: Opening, drawn: PotShape & { kind: 'turned' }, press: number): WallHole {
  const z = opening.placeM * press
  return {
    ...holeOf(opening),
    u: 0,
    v: z,
    halfHeight: (opening.heightM * press) / 2,
    angleRad: opening.angleRad,
    radiusM: Math.max(wallAt(drawn, wallPositionAt(drawn, z)).r, 1e-3),
  }
}

const holeOf = (opening: Opening): Hole => ({
  shape: opening.round ? 'ellipse' : 'rectangle',
  u: 0,
  v: 0,
  halfWidth: opening.widthM / 2,
  halfHeight: opening.heightM / 2,
})

const boxFaces = ['front', 'back', 'left', 'right'] as const
type BoxFace = (typeof boxFaces)[number]

/** The face of a box that a direction meets. */
function faceAt(shape: BoxShape, angle: number): BoxFace {
  if (onEnd(shape, angle)) return Math.cos(angle) > 0 ? 'front' : 'back'
  return Math.sin(angle) > 0 ? 'left' : 'right'
}

function boxFaceMesh(
  shape: BoxShape,
  face: BoxFace,
  form: MeshForm,
  cuts: readonly Opening[],
  press: number,
  thinning: number,
): Float32Array {
  const end = face === 'front' || face === 'back'
  const sign = face === 'front' || face === 'left' ? 1 : -1
  const halfWidth = (end ? shape.widthM : shape.lengthM) / 2
  const middle = shape.heightM / 2
  const distance = (end ? shape.lengthM : shape.widthM) / 2
  const holes = cuts
    .filter((o) => o.face === 'wall' && faceAt(shape, o.angleRad) === face)
    .map((o) => {
      // The centre of the opening where its bearing meets the face.
      const u = end ? sign * distance * Math.tan(o.angleRad) : (sign * distance) / Math.tan(o.angleRad)
      return { ...holeOf(o), u, v: o.placeM * press - middle, halfHeight: (o.heightM * press) / 2 }
    })
  const at = (u: number, v: number): Point =>
    end ? [sign * distance, u, middle + v] : [u, sign * distance, middle + v]
  return flatMesh(
    { outline: { shape: 'rectangle', halfWidth, halfHeight: middle }, holes, at },
    form,
    thinning,
  )
}

function levelMesh(
  shape: PotShape,
  z: number,
  face: 'top' | 'base',
  form: MeshForm,
  cuts: readonly Opening[],
  thinning: number,
): Float32Array {
  const outline = face === 'top' ? topOutline(shape) : baseOutline(shape)
  const holes = cuts
    .filter((o) => o.face === face)
    .map((o) => ({
      ...holeOf(o),
      u: o.placeM * Math.cos(o.angleRad),
      v: o.placeM * Math.sin(o.angleRad),
      // An opening's width runs across its bearing.
      ...(Math.abs(Math.cos(o.angleRad)) > Math.SQRT1_2
        ? { halfWidth: o.heightM / 2, halfHeight: o.widthM / 2 }
        : {}),
    }))
  return flatMesh({ outline, holes, at: (u, v) => [u, v, z] }, form, thinning)
}

const levelOutline = (shape: PotShape, radius: number): FlatOutline =>
  shape.kind === 'box'
    ? { shape: 'rectangle', halfWidth: shape.lengthM / 2, halfHeight: shape.widthM / 2 }
    : { shape: 'circle', radius }

const topOutline = (shape: PotShape) => levelOutline(shape, shape.kind === 'turned' ? shape.topRadiusM : 0)
const baseOutline = (shape: PotShape) => levelOutline(shape, shape.kind === 'turned' ? shape.baseRadiusM : 0)

const sideOutlines = (shape: BoxShape): FlatOutline[] =>
  [shape.lengthM, shape.lengthM, shape.widthM, shape.widthM].map((length) => ({
    shape: 'rectangle',
    halfWidth: length / 2,
    halfHeight: shape.heightM / 2,
  }))
