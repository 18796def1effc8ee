import type { Pot } from '@shared/schema/pot'
import { footLengthM, frameMembers } from './frame-members'
import { footprint, shapeOf, type PotShape } from './shape'
import { mm } from './si'

// Judgement: folded netting lies in about a dozen layers, wall and funnels together.
const nettingLayers = 12
// Judgement: a pot never presses flatter than this, hinges and hooks included.
const leastFoldedM = 0.03

/** Outer size of the pot as it is carried [m]. */
export interface FoldedSize {
  readonly lengthM: number
  readonly widthM: number
  readonly heightM: number
  readonly folds: boolean
}

/**
 * Size of the pot as carried: folded where it folds, rope and float beside it.
 *
 * Folded height: rings one on the other with their wraps, one strut laid over, the netting in layers, feet. A pot
 * that does not fold is as it stands.
 *
 * @source stacking of the parts; layers of netting are judgement
 */
export function foldedSize(pot: Pot): FoldedSize {
  const shape = shapeOf(pot.body)
  const { longM, shortM } = footprint(shape)
  const edge = outerEdge(pot, shape)
  return {
    lengthM: longM + edge,
    widthM: shortM + edge,
    heightM: pot.body.folds ? foldedHeight(pot, shape) : shape.heightM + feetHeight(pot) + edge,
    folds: pot.body.folds,
  }
}

/** Height when pressed flat [m]; never above the height as built. */
export function foldedHeight(pot: Pot, shape: PotShape): number {
  let height = feetHeight(pot)
  let strut = 0
  for (const member of frameMembers(pot, shape)) {
    const outer = member.diameterM + 2 * member.wrapM
    if (member.role === 'strut') strut = Math.max(strut, outer)
    else if (member.role !== 'cross-bar') height += outer * member.count
  }
  const netting = nettingLayers * mm(pot.netting?.twineDiameterMm ?? 0)
  const flat = Math.max(leastFoldedM, height + strut + netting)
  return Math.min(flat, shape.heightM + feetHeight(pot))
}

const feetHeight = (pot: Pot) => (pot.body.feet > 0 ? footLengthM : 0)

/** What the thickest ring adds outside the outline: half its bar and its wrap, on both sides. */
function outerEdge(pot: Pot, shape: PotShape): number {
  return frameMembers(pot, shape)
    .filter((member) => member.role.endsWith('ring'))
    .reduce((widest, member) => Math.max(widest, member.diameterM + 2 * member.wrapM), 0)
}
