import type { FrameMember, Pot } from '@shared/schema/pot'
import { girthAt, reachAt, slantLength, type PotShape } from './shape'
import { mm } from './si'

/** A frame member as it is cut: how long one piece is, how many, and where it sits. */
export interface Member {
  readonly index: number
  readonly role: FrameMember['role']
  readonly material: string
  readonly diameterM: number
  readonly count: number
  readonly pieceLengthM: number
  /** Heights of its centre lines [m]: one a ring, the middle of a strut. */
  readonly heightsM: readonly number[]
  /** Thickness of the chafe wrap or hose over it [m], 0 without. */
  readonly wrapM: number
}

const usualCount: Record<FrameMember['role'], number> = {
  'base-ring': 1,
  'middle-ring': 1,
  'top-ring': 1,
  strut: 4,
  'cross-bar': 1,
}

/** Length of a foot below the base [m]: enough to lift the ring clear of the bed. Judgement. */
export const footLengthM = 0.025

/**
 * The frame members of a design with their lengths.
 *
 * Ring: π D at its height, or the four sides of a box. Strut: the slant of the wall. Cross-bar: across the base.
 * A count left out is 4 struts, else 1.
 *
 * @returns one entry a line of the design's frame, in its order; empty without a frame
 */
export function frameMembers(pot: Pot, shape: PotShape): Member[] {
  return (pot.frame ?? []).map((member, index) => {
    const count = member.count ?? usualCount[member.role]
    const heightsM = heightsOf(member.role, count, shape.heightM)
    return {
      index,
      role: member.role,
      material: member.material,
      diameterM: mm(member.barDiameterMm),
      count,
      pieceLengthM: pieceLength(member.role, shape, heightsM),
      heightsM,
      wrapM: wrapOver(pot, member.role),
    }
  })
}

function heightsOf(role: FrameMember['role'], count: number, heightM: number): number[] {
  if (role === 'base-ring' || role === 'cross-bar') return Array.from({ length: count }, () => 0)
  if (role === 'top-ring') return Array.from({ length: count }, () => heightM)
  if (role === 'strut') return Array.from({ length: count }, () => heightM / 2)
  return Array.from({ length: count }, (_, i) => (heightM * (i + 1)) / (count + 1))
}

function pieceLength(role: FrameMember['role'], shape: PotShape, heightsM: readonly number[]): number {
  if (role === 'strut') return slantLength(shape)
  if (role === 'cross-bar') return shape.kind === 'box' ? shape.widthM : 2 * reachAt(shape, 0, 0)
  const girths = heightsM.map((z) => girthAt(shape, z))
  return girths.reduce((sum, girth) => sum + girth, 0) / girths.length
}

function wrapOver(pot: Pot, role: FrameMember['role']): number {
  const chafe = pot.chafe
  if (!chafe || (chafe.kind !== 'rope-wrap' && chafe.kind !== 'hose')) return 0
  return (chafe.on ?? ['base-ring']).includes(role) ? mm(chafe.thicknessMm ?? 0) : 0
}

/** True where netting is doubled against chafe. */
export function hasDoubleNetting(pot: Pot): boolean {
  return pot.chafe?.kind === 'double-netting'
}
