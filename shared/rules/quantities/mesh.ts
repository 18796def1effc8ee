import type { Netting, Pot } from '@shared/schema/pot'
import { known, missing, stated, type Facts, type Reader, type Reading } from '../facts'

// A square mesh; the least that the longer diagonal can be for a given bar.
const SQUARE = Math.SQRT1_2

/**
 * Longer diagonal of a mesh from its bar.
 *
 * 2·b·max(E, √(1 − E²)); a square mesh (E = 0.7071) gives √2·b. Where the hanging ratio is not stated the square
 * mesh is taken: no other hanging makes the longer diagonal shorter.
 *
 * @param netting bar length knot to knot [mm]
 * @param barMm   bar length after anything that narrows it [mm]
 * @returns diagonal [mm]
 */
function diagonalMm(netting: Netting, barMm: number): number {
  const across = netting.hangingRatio ?? SQUARE
  return 2 * barMm * Math.max(across, Math.sqrt(1 - across ** 2))
}

/**
 * What chafe gear leaves of a mesh bar: a second netting laid over the first halves it at worst; a wrap or a hose
 * on a ring takes its thickness from the row beside it.
 */
function narrowedBarMm(pot: Pot, netting: Netting): number | string {
  const { chafe } = pot
  if (!chafe) return 'whether chafe gear narrows the mesh'
  if (chafe.kind === 'none') return netting.barLengthMm
  if (chafe.kind === 'double-netting') return netting.barLengthMm / 2
  if (chafe.thicknessMm === undefined) return 'the thickness of the chafe gear'
  return Math.max(0, netting.barLengthMm - chafe.thicknessMm)
}

const whole =
  (measure: (netting: Netting) => number): Reader =>
  ({ pot }) =>
    pot.netting ? known(measure(pot.netting)) : missing('the netting')

const narrowed =
  (measure: (netting: Netting, barMm: number) => number) =>
  ({ pot }: Facts): Reading => {
    if (!pot.netting) return missing('the netting')
    const bar = narrowedBarMm(pot, pot.netting)
    return typeof bar === 'string' ? missing(bar) : known(measure(pot.netting, bar))
  }

export const meshReaders = {
  'mesh.bar': whole((netting) => netting.barLengthMm),
  'mesh.diagonal': whole((netting) => diagonalMm(netting, netting.barLengthMm)),
  'mesh.stretched': whole((netting) => 2 * netting.barLengthMm),
  'mesh.narrowed-bar': narrowed((_, bar) => bar),
  'mesh.narrowed-diagonal': narrowed(diagonalMm),
  'mesh.narrowed-stretched': narrowed((_, bar) => 2 * bar),
  'mesh.material': ({ pot }) => stated(pot.netting?.material, 'the netting'),
  'mesh.entangles': ({ pot }) => stated(pot.netting?.entangles, 'whether the netting can tangle a crab'),
  'chafe.kind': ({ pot }) => stated(pot.chafe?.kind, 'the chafe gear'),
} satisfies Record<string, Reader>
