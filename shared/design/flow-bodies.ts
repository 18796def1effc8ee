import type { FlowBody } from '@shared/physics/holding/flow-body'
import type { Materials } from '@shared/schema/materials'
import type { Netting, Pot } from '@shared/schema/pot'
import { entranceShapes, funnelArea } from './entrance-shape'
import { frameMembers, hasDoubleNetting, type Member } from './frame-members'
import { baitHolderRow, solidById, twineProperties } from './materials/lookup'
import { hasTopNetting, nettingMassPerM2 } from './netting-panels'
import { baitPlace } from './part-masses'
import { baseArea, shortSide, sideOutlineArea, sideOutlineCentre, topArea, type PotShape } from './shape'
import { mm } from './si'
import { nettingSolidity } from './solidity'

/** What use and season do to the pot as the current meets it. */
export interface FlowState {
  /** Growth on the twine: a factor on its diameter, 1 clean. */
  readonly foulingFactor?: number
  /** Times by which growth multiplies the drag of the netting, 1 clean. */
  readonly growthDrag?: number
  /** Lift of a closed or fouled top, on plan area times solidity. */
  readonly closedTopLift?: number
  /** Height of the base over the bed [m], on feet. */
  readonly baseHeightM?: number
}

// Judgement: frontal outline of crabs inside, m2 for each kilogram; they sit low, behind the front netting.
const catchAreaPerKg = 0.012
const catchHeightM = 0.06
// Judgement: the sides of a funnel lie nearly along the current.
const funnelAlphaDeg = 75
const lumpCd = 1.05

/**
 * Everything on a pot that the current pushes on, the long side of a box across the stream.
 *
 * Netting: front panel, back panel behind one, sides (box) and top and base along the stream, funnels. A sloping
 * wall keeps its slope as the angle to the stream; its upstream side is pressed down and its downstream side
 * lifts. Bars: rings as a front and a rear half, struts likewise, cross-bars at their mean projection 2/π. Chafe
 * wrap makes a bar d + 2t. Bait, catch and ballast as bluff bodies.
 *
 * @param pot       the design; without netting no netting bodies
 * @param materials for volumes
 * @param shape     its outline
 * @param state     growth, lift of a closed top, height on feet
 * @source panels as in the screen-model convention of Cheng et al. 2020; bluff bodies Hoerner 1965 (from memory)
 */
export function flowBodies(
  pot: Pot,
  materials: Materials,
  shape: PotShape,
  state: FlowState = {},
): FlowBody[] {
  const lift = state.baseHeightM ?? 0
  const bodies = [
    ...(pot.netting ? nettingBodies(pot, pot.netting, materials, shape, state) : []),
    ...frameMembers(pot, shape).flatMap((member) => barBodies(member, shape)),
    ...lumps(pot, materials, shape),
  ]
  return lift === 0
    ? bodies
    : bodies.map((body) => ({
        ...body,
        centreHeightM: body.centreHeightM + lift,
        topHeightM: body.topHeightM + lift,
      }))
}

function nettingBodies(
  pot: Pot,
  netting: Netting,
  materials: Materials,
  shape: PotShape,
  state: FlowState,
): FlowBody[] {
  const growth = state.foulingFactor ?? 1
  const plain = nettingSolidity(netting, growth)
  // A second layer blocks the same share of what the first lets through.
  const solidity = hasDoubleNetting(pot) ? 1 - (1 - plain) * (1 - plain / 2) : plain
  const volumePerM2 = solidVolumePerM2(netting, materials) * growth * growth
  const h = shape.heightM
  const common = {
    part: 'netting',
    kind: 'netting',
    twineDiameterM: mm(netting.twineDiameterMm) * growth,
    ...(state.growthDrag === undefined ? {} : { growthDrag: state.growthDrag }),
  } as const
  const panel = (
    areaM2: number,
    alphaDeg: number,
    centreHeightM: number,
    topHeightM: number,
    shadowed: number,
  ) => ({
    ...common,
    areaM2,
    solidity,
    alphaDeg,
    shadowed,
    centreHeightM,
    topHeightM,
    volumeM3: volumePerM2 * areaM2,
  })
  const slope = wallSlopeDeg(shape)
  const area = sideOutlineArea(shape) / Math.cos((slope * Math.PI) / 180)
  const centre = sideOutlineCentre(shape)
  // A body reaches as far below its middle as above; a cone's middle is low.
  const top = Math.min(h, 2 * centre)
  const sloping = Math.abs(slope) > 1
  const bodies: FlowBody[] = [
    { ...panel(area, Math.abs(slope), centre, top, 0), ...(sloping ? { liftSign: slope > 0 ? -1 : 1 } : {}) },
    { ...panel(area, Math.abs(slope), centre, top, 1), ...(sloping ? { liftSign: slope > 0 ? 1 : -1 } : {}) },
    { ...panel(baseArea(shape), 90, 0.005, 0.01, 0), solidity: plain },
  ]
  if (shape.kind === 'box') bodies.push(panel(2 * shortSide(shape) * h, 90, h / 2, h, 0))
  if (hasTopNetting(pot)) {
    const plan = topArea(shape)
    const closed = Math.min(1, plain * (state.growthDrag ?? 1))
    bodies.push({
      ...panel(plan, 90, h, h, 0),
      solidity: plain,
      liftAreaM2: (state.closedTopLift ?? 0) * plan * closed * closedShare(closed),
    })
  }
  for (const entrance of entranceShapes(pot, shape)) {
    const funnel = funnelArea(entrance)
    if (funnel === 0) continue
    const middle = entrance.onTop ? h - entrance.depthM / 2 : entrance.sillM + entrance.heightM / 2
    const half = (entrance.onTop ? entrance.depthM : entrance.heightM) / 2
    bodies.push({
      ...panel(funnel, funnelAlphaDeg, middle, middle + half, 1),
      part: 'entrances',
      solidity: plain,
    })
  }
  return bodies
}

/** How far a top counts as closed: not at all below a solidity of 0.3, wholly from 0.5. Judgement. */
const closedShare = (solidity: number) => Math.min(1, Math.max(0, (solidity - 0.3) / 0.2))

/** Lean of the wall from upright [deg], positive where the pot narrows upwards. */
function wallSlopeDeg(shape: PotShape): number {
  if (shape.kind === 'box') return 0
  return (Math.atan2(shape.baseRadiusM - shape.topRadiusM, shape.heightM) * 180) / Math.PI
}

function solidVolumePerM2(netting: Netting, materials: Materials): number {
  const twine = twineProperties(materials, netting)
  return twine ? nettingMassPerM2(netting, twine.massKgPerM) / twine.densityKgM3 : 0
}

function barBodies(member: Member, shape: PotShape): FlowBody[] {
  const outer = member.diameterM + 2 * member.wrapM
  const volume = (Math.PI / 4) * outer * outer * member.pieceLengthM
  const half = (
    areaM2: number,
    shadowed: number,
    centre: number,
    top: number,
    volumeM3: number,
  ): FlowBody => ({
    part: member.role,
    kind: 'bar',
    areaM2,
    shadowed,
    centreHeightM: centre,
    topHeightM: top,
    volumeM3,
  })
  if (member.role === 'strut') {
    const area = (outer * shape.heightM * member.count) / 2
    const solid = (volume * member.count) / 2
    return [0, 1].map((shadowed) => half(area, shadowed, shape.heightM / 2, shape.heightM, solid))
  }
  if (member.role === 'cross-bar') {
    const area = (2 / Math.PI) * outer * member.pieceLengthM * member.count
    return [half(area, 1, outer / 2, outer, volume * member.count)]
  }
  // Half the girth of a ring, seen from the side, is its width: D of π D, or a side of a box.
  const width = shape.kind === 'box' ? Math.max(shape.lengthM, shape.widthM) : member.pieceLengthM / Math.PI
  return member.heightsM.flatMap((z) => {
    const centre = Math.max(z, outer / 2)
    return [0, 1].map((shadowed) => half(outer * width, shadowed, centre, centre + outer / 2, volume / 2))
  })
}

function lumps(pot: Pot, materials: Materials, shape: PotShape): FlowBody[] {
  const bodies: FlowBody[] = []
  const row = pot.bait && baitHolderRow(materials, pot.bait)
  if (row) {
    const height = Math.min(mm(row.heightMm), shape.heightM)
    const centre = Math.min(Math.max(baitPlace(pot, shape)[2], height / 2), shape.heightM - height / 2)
    bodies.push({
      part: 'bait',
      kind: 'bluff',
      areaM2: mm(row.diameterMm) * height,
      shadowed: 1,
      centreHeightM: centre,
      topHeightM: centre + height / 2,
      volumeM3: row.massKg / row.densityKgM3 + (pot.bait?.massKg ?? 0) / 1060,
    })
  }
  if (pot.catchKg)
    bodies.push({
      part: 'catch',
      kind: 'bluff',
      areaM2: pot.catchKg * catchAreaPerKg,
      shadowed: 1,
      centreHeightM: Math.min(catchHeightM, shape.heightM) / 2,
      topHeightM: Math.min(catchHeightM, shape.heightM),
      volumeM3: pot.catchKg / (solidById(materials, 'crab')?.densityKgM3 ?? 1130),
    })
  for (const piece of pot.ballast ?? []) {
    const volumeM3 = piece.massKg / (solidById(materials, piece.material)?.densityKgM3 ?? 11400)
    const side = Math.cbrt(volumeM3)
    if (side > 0)
      bodies.push({
        part: 'ballast',
        kind: 'bluff',
        areaM2: side * side,
        shadowed: 1,
        cd: lumpCd,
        centreHeightM: Math.max(mm(piece.heightMm), side / 2),
        topHeightM: Math.max(mm(piece.heightMm), side / 2) + side / 2,
        volumeM3,
      })
  }
  return bodies
}
