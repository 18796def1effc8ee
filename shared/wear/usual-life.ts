import type { Assumption } from '@shared/schema/assumption'
import type { WearAssumptions } from './assumptions'
import type { PartUse } from './part-use'

/** The usual life of a kind of part with the unit it is counted in; none for metal, which wears by its zinc. */
export function usualLife(
  part: Pick<PartUse, 'kind' | 'material'>,
  sheet: WearAssumptions,
): Assumption | undefined {
  const material = (part.material ?? '').toLowerCase()
  switch (part.kind) {
    case 'rope':
      return sheet.ropeLife
    case 'netting':
      return sheet.nettingLife
    case 'bait-bag':
      return sheet.baitBagLife
    case 'chafe':
      return sheet.chafeLife
    case 'ties':
      return material.includes('black') ? sheet.tiesBlackLife : sheet.tiesLife
    case 'float':
      return material.includes('eps') ? sheet.floatEpsLife : sheet.floatLife
    case 'tag':
      return sheet.tagLife
    case 'door-hook':
      return sheet.doorHookLife
    case 'release-cord':
      return sheet.cordLife
    case 'frame':
    case 'bait-basket':
      return undefined
  }
}
