import { group } from 'd3-array'
import type { LockerState } from '@shared/journal/locker-state'
import type { DueItem } from './due'
import { itemOf, quantityOf, unitOf, type ItemUnit } from './item'
import type { InstalledPart } from '@shared/schema/gear'

/** One line of the shopping list. */
interface ShoppingLine {
  readonly item: string
  readonly unit: ItemUnit
  /** All that the plan takes, what is in hand, and what is left to buy. */
  readonly needed: number
  readonly inHand: number
  readonly toBuy: number
  /** Whole coils to buy, where it is sold so. */
  readonly coils?: number
  /** Money for what is to be bought; absent where no price is known. */
  readonly cost?: number
  /** Parts whose length was never written down, so that the need is larger than shown. */
  readonly unmeasured: number
}

export interface ShoppingList {
  readonly lines: readonly ShoppingLine[]
  readonly total: number
  /** Lines to buy that have no price. */
  readonly unpriced: number
}

/**
 * What to buy for everything that is due to be replaced: rope and cord by the metre or whole coils, netting by the
 * panel, the rest by the piece, less what is in stock.
 *
 * @param due   the things to do
 * @param state stock and prices
 * @returns lines by item, the total of those with a price
 */
export function shoppingList(
  due: readonly DueItem[],
  state: Pick<LockerState, 'stock' | 'prices'>,
): ShoppingList {
  const parts = due.flatMap(({ action, report }) =>
    action === 'replace' && report ? [report.part.part] : [],
  )
  const byItem = group(parts, itemOf)
  const lines = [...byItem]
    .map(([item, alike]) => shoppingLine(item, alike, state))
    .sort((a, b) => a.item.localeCompare(b.item, 'en'))
  return {
    lines,
    total: lines.reduce((sum, line) => sum + (line.cost ?? 0), 0),
    unpriced: lines.filter((line) => line.toBuy > 0 && line.cost === undefined).length,
  }
}

function shoppingLine(
  item: string,
  parts: readonly InstalledPart[],
  { stock, prices }: Pick<LockerState, 'stock' | 'prices'>,
): ShoppingLine {
  const [first] = parts
  const quantities = parts.map(quantityOf)
  const needed = quantities.reduce<number>((sum, quantity) => sum + (quantity ?? 0), 0)
  const inHand = Math.max(0, stock[item] ?? 0)
  const toBuy = Math.max(0, needed - inHand)
  const price = prices[item]
  const coils =
    price?.per === 'coil' && price.coilM ? Math.max(0, Math.ceil(toBuy / price.coilM - 1e-9)) : undefined
  const paid = parts
    .map((part, i) => ({ cost: part.cost, quantity: quantities[i] }))
    .find(({ cost, quantity }) => cost !== undefined && quantity)
  const each =
    price && price.per !== 'coil'
      ? price.each
      : paid?.cost !== undefined && paid.quantity
        ? paid.cost / paid.quantity
        : undefined
  const cost =
    price && coils !== undefined ? coils * price.each : each === undefined ? undefined : each * toBuy
  return {
    ...{ item, unit: first ? unitOf[first.kind] : 'piece', needed, inHand, toBuy },
    ...(coils === undefined ? {} : { coils }),
    ...(cost === undefined ? {} : { cost }),
    unmeasured: quantities.filter((quantity) => quantity === undefined).length,
  }
}
