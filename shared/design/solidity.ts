import type { Netting } from '@shared/schema/pot'
import { diamondMeshSolidity, squareMeshSolidity } from '@shared/physics/netting/solidity'
import { isWire, meshForm } from './netting-panels'

/**
 * Solid share of the outline of a design's netting, with growth on its twine.
 *
 * Wire: 2d/a - (d/a)². Twine: k - k²/4, k = d/(a E₁ E₂). Knots add 0.75 (d/a)²/(E₁ E₂), which for square-hung
 * meshes gives 2d/a + 0.5 (d/a)².
 *
 * @param netting twine and bar as bought, hanging ratio as hung
 * @param growth  factor on the twine's diameter, ≥ 1; 1 clean
 * @returns solid share, 0-1
 * @source projected-area geometry; knots about 2d across, Fredheim 2005 as given in Klebert et al. 2013 (from memory)
 */
export function nettingSolidity(netting: Netting, growth = 1): number {
  const { barM, twineM, e1, e2 } = meshForm(netting)
  const d = twineM * growth
  if (isWire(netting)) return squareMeshSolidity(d, barM)
  const plain = diamondMeshSolidity(d, barM, e1)
  return netting.knotted ? Math.min(1, plain + (0.75 * (d / barM) ** 2) / (e1 * e2)) : plain
}
