import type { PartName } from '@shared/schema/check'
import type { ItemKind } from '@shared/schema/rule-quantities'
import { isDecided, type Decided, type Outcome } from './outcome'

/** So many items of one sort are wanted; how each item there is fares against it. */
export interface Want {
  readonly count: number
  readonly items: readonly { readonly count: number; readonly outcome: Outcome }[]
}

const names: Record<ItemKind, { one: string; several: string }> = {
  entrance: { one: 'entrance fits', several: 'entrances fit' },
  gap: { one: 'escape gap fits', several: 'escape gaps fit' },
  'rope-weight': { one: 'weight on the rope fits', several: 'weights on the rope fit' },
}

/**
 * Whether so many different items can be found for every want at once: two rings of two sizes are not met by two
 * of one size.
 *
 * Where one sort is wanted and measured, the figures are those of the item that decides: the last one needed.
 *
 * @param kind  what is counted
 * @param part  part for the finding
 * @param wants sorts of item, each with its number
 * @returns `holds` where every want has its own items, `unknown` where what is not known could make it so
 */
export function hasItems(kind: ItemKind, part: PartName, wants: readonly Want[]): Outcome {
  const outcomes = wants.flatMap((want) => want.items.map((item) => item.outcome))
  const state = assign(wants)
  if (state === 'unknown') {
    const missing = outcomes.flatMap((outcome) => (outcome.state === 'unknown' ? outcome.missing : []))
    return { state, missing: [...new Set(missing)], part }
  }
  const wanted = wants.reduce((sum, want) => sum + want.count, 0)
  const fitting = countFitting(wants)
  const figures = decidingFigures(wants) ?? {
    actual: fitting,
    limit: wanted,
    margin: fitting - wanted,
    unit: '',
  }
  if (state === 'holds')
    return { state, says: `${fitting} ${names[kind][fitting === 1 ? 'one' : 'several']}.`, part, ...figures }
  const shortfall =
    fitting < wanted
      ? `${wanted} needed; ${fitting} of them ${fitting === 1 ? 'fits' : 'fit'}.`
      : 'Two of one size do not stand for two sizes.'
  const misses = outcomes.filter(isDecided('fails')).map((outcome) => outcome.says)
  const says = [shortfall, ...new Set(misses)].filter((text) => text !== '').join(' ')
  return { state, says, part, ...figures, margin: Math.min(figures.margin, 0) }
}

/** Items that fit at least one want. */
function countFitting(wants: readonly Want[]): number {
  const items = wants[0]?.items ?? []
  return items.reduce(
    (sum, item, index) =>
      sum + (wants.some((want) => want.items[index]?.outcome.state === 'holds') ? item.count : 0),
    0,
  )
}

type Figures = { actual: number; limit: number; margin: number; unit: string }

/** Of the items by margin, the last that is needed; nothing where there are too few, or where they have no figures. */
function decidingFigures(wants: readonly Want[]): Figures | undefined {
  const [want] = wants
  if (!want || wants.length > 1) return undefined
  const each = want.items.flatMap(({ count, outcome }) => {
    const figures = outcome.state === 'holds' || outcome.state === 'fails' ? figuresOf(outcome) : undefined
    return figures ? Array.from({ length: count }, () => figures) : []
  })
  return each.toSorted((a, b) => b.margin - a.margin)[want.count - 1]
}

function figuresOf({ actual, limit, margin, unit }: Decided): Figures | undefined {
  return typeof actual === 'number' && typeof limit === 'number' && margin !== undefined && unit !== undefined
    ? { actual, limit, margin, unit }
    : undefined
}

function assign(wants: readonly Want[]): 'holds' | 'unknown' | 'fails' {
  if (canAssign(wants, (outcome) => outcome.state === 'holds')) return 'holds'
  return canAssign(wants, (outcome) => outcome.state === 'holds' || outcome.state === 'unknown')
    ? 'unknown'
    : 'fails'
}

/** Tries every assignment of items to wants; both are few. */
function canAssign(wants: readonly Want[], fits: (outcome: Outcome) => boolean): boolean {
  const slots = wants.flatMap((want) => Array.from({ length: want.count }, () => want.items))
  const left = (slots[0] ?? []).map((item) => item.count)
  const fill = (slot: number): boolean => {
    const items = slots[slot]
    if (!items) return true
    return items.some((item, index) => {
      const remaining = left[index] ?? 0
      if (remaining < 1 || !fits(item.outcome)) return false
      left[index] = remaining - 1
      const done = fill(slot + 1)
      left[index] = remaining
      return done
    })
  }
  return fill(0)
}
