import type { InstalledPart, PartKind } from '@shared/schema/gear'
import type { LockerState } from '@shared/journal/locker-state'

export type ItemUnit = 'm' | 'panel' | 'piece'

/** How a kind of part is bought. */
export const unitOf: Record<PartKind, ItemUnit> = {
  rope: 'm',
  'release-cord': 'm',
  chafe: 'm',
  netting: 'panel',
  'bait-bag': 'piece',
  'bait-basket': 'piece',
  frame: 'piece',
  float: 'piece',
  tag: 'piece',
  ties: 'piece',
  'door-hook': 'piece',
}

/** Usual lengths where a part was written down without one [m]. */
const usualLengthM: Partial<Record<PartKind, number>> = { 'release-cord': 1 }

/** The name under which a part is stocked and bought, as `rope-pp-8mm`; its own where it has one. */
export function itemOf(part: InstalledPart): string {
  if (part.item !== undefined) return part.item
  const words = [
    part.kind,
    part.material,
    part.diameterMm === undefined ? undefined : `${part.diameterMm}mm`,
    part.barLengthMm === undefined ? undefined : `${part.barLengthMm}mm-mesh`,
  ]
  return words
    .filter((word) => word !== undefined)
    .join('-')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 64)
}

/** How much of its item a part takes, in the unit of its kind; undefined where its length is not known. */
export function quantityOf(part: InstalledPart): number | undefined {
  return unitOf[part.kind] === 'm' ? (part.lengthM ?? usualLengthM[part.kind]) : (part.count ?? 1)
}

/** What a part costs new: by the list of prices, else what was paid for it, else not known. */
export function costNew(part: InstalledPart, prices: LockerState['prices']): number | undefined {
  const price = prices[itemOf(part)]
  const quantity = quantityOf(part)
  if (!price || quantity === undefined) return part.cost
  return price.per === 'coil'
    ? price.coilM
      ? (price.each / price.coilM) * quantity
      : part.cost
    : price.each * quantity
}
