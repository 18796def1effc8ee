import type { Materials } from '@shared/schema/materials'
import type { PartName } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { footLengthM, frameMembers, type Member } from './frame-members'
import { barMassPerM, baitHolderRow, solidById, twineProperties } from './materials/lookup'
import { nettingMassPerM2, nettingPanels } from './netting-panels'
import { reachAt, type PotShape } from './shape'
import { mm } from './si'

/** One part's share of mass and displaced volume, and where it acts. */
export interface PartMass {
  readonly part: PartName
  readonly index?: number
  readonly massKg: number
  readonly volumeM3: number
  readonly centre: readonly [x: number, y: number, z: number]
}

/** What the masses were made from, and the paths of materials that the tables do not know. */
export interface PartMasses {
  readonly parts: PartMass[]
  readonly unknown: string[]
}

const round = (d: number, length: number) => (Math.PI / 4) * d * d * length

/**
 * Mass and volume of every part of the pot itself: frame, feet, wrap, ballast, netting and the empty bait holder.
 * Rope, float, bait and catch are not among them.
 *
 * @param pot       the design
 * @param materials tables of densities, bars, twine and holders
 * @param shape     its outline
 * @returns parts in the design's order; paths of unknown materials, whose parts are missing
 */
export function partMasses(pot: Pot, materials: Materials, shape: PotShape): PartMasses {
  const parts: PartMass[] = []
  const unknown: string[] = []
  const add = (part: PartMass | undefined, path: string) => {
    if (part) parts.push(part)
    else unknown.push(path)
  }
  for (const member of frameMembers(pot, shape)) {
    add(bars(member, materials), `frame.${member.index}.material`)
    if (member.wrapM > 0) add(wrap(member, pot, materials), 'chafe.kind')
  }
  add(feet(pot, materials, shape), 'frame')
  for (const [index, piece] of (pot.ballast ?? []).entries())
    add(
      lump('ballast', index, piece.massKg, piece.material, mm(piece.heightMm), materials),
      `ballast.${index}.material`,
    )
  netting(pot, materials, shape, add)
  if (pot.bait) add(baitHolder(pot, materials, shape), 'bait.holder')
  return { parts: parts.filter((part) => part.massKg > 0), unknown }
}

function bars(member: Member, materials: Materials): PartMass | undefined {
  const perM = barMassPerM(materials, member.material, member.diameterM * 1000)
  const length = member.pieceLengthM * member.count
  return perM === undefined
    ? undefined
    : {
        part: member.role,
        index: member.index,
        massKg: perM * length,
        volumeM3: round(member.diameterM, length),
        centre: [0, 0, meanHeight(member)],
      }
}

const meanHeight = (member: Member) =>
  member.heightsM.reduce((sum, z) => sum + z, 0) / Math.max(1, member.heightsM.length)

// A wrap of rope laid turn on turn fills about π/4 of the sleeve it makes; hose fills all of it.
const wrapFill = { 'rope-wrap': Math.PI / 4, hose: 1 } as const
const wrapSolid = { 'rope-wrap': 'pp', hose: 'pvc' } as const

function wrap(member: Member, pot: Pot, materials: Materials): PartMass | undefined {
  const kind = pot.chafe?.kind === 'hose' ? 'hose' : 'rope-wrap'
  const density = solidById(materials, wrapSolid[kind])?.densityKgM3
  if (density === undefined) return undefined
  const length = member.pieceLengthM * member.count
  const outer = member.diameterM + 2 * member.wrapM
  const volumeM3 = wrapFill[kind] * (round(outer, length) - round(member.diameterM, length))
  return {
    part: 'chafe',
    index: member.index,
    massKg: density * volumeM3,
    volumeM3,
    centre: [0, 0, meanHeight(member)],
  }
}

/** Feet are stubs of the base ring's bar; without a base ring there is nothing to make them of. */
function feet(pot: Pot, materials: Materials, shape: PotShape): PartMass | undefined {
  const ring = frameMembers(pot, shape).find((member) => member.role === 'base-ring')
  const length = pot.body.feet * footLengthM
  const none: PartMass = { part: 'frame', massKg: 0, volumeM3: 0, centre: [0, 0, 0] }
  if (!ring || length === 0) return none
  const perM = barMassPerM(materials, ring.material, ring.diameterM * 1000)
  return perM === undefined
    ? none
    : {
        ...none,
        massKg: perM * length,
        volumeM3: round(ring.diameterM, length),
        centre: [0, 0, -footLengthM / 2],
      }
}

function lump(
  part: PartName,
  index: number,
  massKg: number,
  material: string,
  z: number,
  materials: Materials,
): PartMass | undefined {
  const density = solidById(materials, material)?.densityKgM3
  return density === undefined
    ? undefined
    : { part, index, massKg, volumeM3: massKg / density, centre: [0, 0, z] }
}

function netting(
  pot: Pot,
  materials: Materials,
  shape: PotShape,
  add: (part: PartMass | undefined, path: string) => void,
): void {
  if (!pot.netting) return
  const twine = twineProperties(materials, pot.netting)
  if (!twine) return add(undefined, 'netting.material')
  const perM2 = nettingMassPerM2(pot.netting, twine.massKgPerM)
  for (const panel of nettingPanels(pot, shape)) {
    const massKg = perM2 * panel.areaM2
    add(
      {
        part: panel.part,
        ...(panel.index === undefined ? {} : { index: panel.index }),
        massKg,
        volumeM3: massKg / twine.densityKgM3,
        centre: [0, 0, panel.centreHeightM],
      },
      'netting',
    )
  }
}

/** Where the bait hangs: the middle, near the wall at the back, or under the top. */
export function baitPlace(pot: Pot, shape: PotShape): readonly [number, number, number] {
  const bait = pot.bait
  if (!bait) return [0, 0, 0]
  if (bait.at === 'top') return [0, 0, shape.heightM]
  const z = Math.min(mm(bait.heightMm), shape.heightM)
  // Beside the wall at bearing 90°, which is free of the entrances of a two-funnel pot.
  return bait.at === 'side' ? [0, -0.75 * reachAt(shape, -Math.PI / 2, z), z] : [0, 0, z]
}

function baitHolder(pot: Pot, materials: Materials, shape: PotShape): PartMass | undefined {
  const row = pot.bait && baitHolderRow(materials, pot.bait)
  return (
    row && {
      part: 'bait',
      massKg: row.massKg,
      volumeM3: row.massKg / row.densityKgM3,
      centre: baitPlace(pot, shape),
    }
  )
}
