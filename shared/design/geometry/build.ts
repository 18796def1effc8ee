import type { PartName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { entranceShapes } from '../entrance-shape'
import { foldedHeight } from '../folded-size'
import { builtInMaterials } from '../materials/built-in'
import { baitHolderRow, solidById } from '../materials/lookup'
import { shapeOf, withHeight, type PotShape } from '../shape'
import { mm } from '../si'
import { anchorsOf } from './anchors'
import { dimensionLines } from './dimensions'
import { entranceDrawing } from './entrance-lines'
import { frameTubes } from './frame-tubes'
import { lookOfMaterial } from './looks'
import { nettingLines } from './netting-lines'
import { openingRims } from './opening-rims'
import { openingsOf } from './openings'
import { boundsOf } from './pot-bounds'
import type { GeometryOptions, MeshLines, PotGeometry, Tube } from './pot-geometry'
import { baitParts, ballastBlocks, tackleOf } from './tackle'

const usualCap = 200_000

/**
 * The pot as plain arrays for drawing: bars with their true diameters, netting that follows its bar length with
 * holes for what opens in it, funnels, bait, ballast, bridle, the start of the rope and the float, with a point
 * for a leader line and dimension lines.
 *
 * Metres, z up from the base, +x to the front. Folded, the outline is lowered and the struts lie over.
 *
 * @param pot     the design
 * @param options fold 0-1, cap on netting segments, float on or off
 * @returns arrays that hold no reference to the design
 */
export function potGeometry(pot: Pot, options: GeometryOptions = {}): PotGeometry {
  const built = shapeOf(pot.body)
  const drawn = foldedTo(pot, built, options.fold ?? 0)
  const press = drawn.heightM / built.heightM
  const entrances = entranceShapes(pot, built)
  const openings = openingsOf(pot, built, entrances)
  const tubes: Tube[] = [...frameTubes(pot, built, drawn), ...openingRims(pot, drawn, press, openings)]
  const meshes: MeshLines[] = pot.netting
    ? nettingLines(pot, pot.netting, built, drawn, openings, options.maxSegments ?? usualCap)
    : []
  for (const entrance of entrances) {
    const opening = openings.find((o) => o.part === 'entrances' && o.index === entrance.index)
    if (!opening) continue
    const drawing = entranceDrawing(entrance, opening, pot.netting, drawn, press)
    tubes.push(...drawing.tubes)
    meshes.push(...drawing.meshes)
  }
  const bait = baitParts(pot, drawn, baitSize(pot))
  tubes.push(...bait.tubes)
  const tackle = tackleOf(pot, drawn, options.withFloat !== false)
  const blocks = [...tackle.blocks, ...ballast(pot, drawn)]
  const ofPot = { tubes, meshes, lathes: bait.lathes, blocks }
  const bounds = boundsOf(drawn, tubes)
  const whole = {
    tubes: [...tubes, ...tackle.tubes],
    meshes,
    lathes: [...bait.lathes, ...tackle.lathes],
    blocks: ofPot.blocks,
  }
  return {
    ...whole,
    anchors: anchorsOf(pot, drawn, whole),
    dimensions: dimensionLines(pot, drawn, press, openings),
    bounds,
    haulPoint: tackle.apex,
    lineCounts: lineCounts(meshes),
  }
}

function foldedTo(pot: Pot, built: PotShape, fold: number): PotShape {
  if (!pot.body.folds || fold <= 0) return built
  const flat = Math.min(foldedHeight(pot, built), built.heightM)
  return withHeight(built, built.heightM + (flat - built.heightM) * Math.min(1, fold))
}

function baitSize(pot: Pot): { diameterM: number; heightM: number } {
  const row = pot.bait && baitHolderRow(builtInMaterials, pot.bait)
  return { diameterM: mm(row?.diameterMm ?? 0), heightM: mm(row?.heightMm ?? 0) }
}

function ballast(pot: Pot, drawn: PotShape) {
  const pieces = pot.ballast ?? []
  // A material of the user's own is drawn at the density of lead: only its drawn size depends on it.
  const lead = 11400
  const volumes = pieces.map(
    (piece) => piece.massKg / (solidById(builtInMaterials, piece.material)?.densityKgM3 ?? lead),
  )
  return ballastBlocks(
    pot,
    drawn,
    volumes,
    pieces.map((piece) => lookOfMaterial(piece.material)),
  )
}

function lineCounts(meshes: readonly MeshLines[]): Partial<Record<PartName, number>> {
  const counts: Partial<Record<PartName, number>> = {}
  for (const mesh of meshes) counts[mesh.part] = (counts[mesh.part] ?? 0) + mesh.segments.length / 6
  return counts
}
