import type { InstalledPart } from '@shared/schema/gear'
import type { LockerState } from '@shared/journal/locker-state'
import { itemOf, unitOf, type ItemUnit } from '@shared/season/item'
import { partKindWords } from '@renderer/gear/gear-words'
import { sayInstalled } from '@renderer/gear/say'
import { withoutEmpty } from '@renderer/gear/without-empty'

/** Something that is stocked and bought. */
export interface Item {
  readonly item: string
  readonly name: string
  readonly unit: ItemUnit
}

/** A name people use for an item, from a part of its kind; the length of one part says nothing of the item. */
function nameOf(part: InstalledPart): string {
  const { kind, installedOn, material, diameterMm, barLengthMm } = part
  const said = sayInstalled({
    ...{ kind, installedOn },
    ...withoutEmpty({ material, diameterMm, barLengthMm }),
  })
  return said === '' ? partKindWords[part.kind] : `${partKindWords[part.kind]}, ${said}`
}

/** Everything that pots in use are made of, and everything in stock, by name. */
export function itemsOf({ parts, stock, prices }: LockerState): Item[] {
  const items = new Map<string, Item>()
  for (const { part, status } of Object.values(parts)) {
    const item = itemOf(part)
    if (status === 'fitted' && !items.has(item))
      items.set(item, { item, name: nameOf(part), unit: unitOf[part.kind] })
  }
  for (const item of [...Object.keys(stock), ...Object.keys(prices)])
    if (!items.has(item)) items.set(item, { item, name: item.replace(/-/g, ' '), unit: 'piece' })
  return [...items.values()].sort((a, b) => a.name.localeCompare(b.name))
}
