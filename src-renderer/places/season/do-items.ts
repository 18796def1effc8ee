import type { DueItem } from '@shared/season/due'
import { itemOf, quantityOf } from '@shared/season/item'
import { markDone } from '@shared/season/mark-done'
import { partKindWords } from '@renderer/gear/gear-words'
import { freshId } from '@renderer/state/fresh-pot'
import { locker } from '@renderer/state/locker.svelte'
import { today } from '@renderer/state/today'
import { todoWords as w } from './words'

/** Marks things as done: a like part put in, from stock as long as there is some, or a pot cleaned. */
export async function doItems(items: readonly DueItem[]): Promise<void> {
  const left = { ...locker.state.stock }
  const events = items.flatMap((item) => {
    const part = item.report?.part.part
    const stocked = part && itemOf(part)
    const quantity = part && quantityOf(part)
    const inHand = stocked === undefined ? 0 : (left[stocked] ?? 0)
    const fromStock = quantity !== undefined && inHand >= quantity
    if (fromStock && stocked !== undefined) left[stocked] = inHand - quantity
    return markDone(item, { newPart: freshId(), on: today(), reason: 'worn', fromStock })
  })
  const [head] = items
  if (!head || events.length === 0) return
  const part = head.report && partKindWords[head.report.part.part.kind]
  await locker.record(events, part ? w.replaced(part, items.length) : w.cleaned(items.length))
}
