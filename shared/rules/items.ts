import type { Outcome } from './outcome'

/** Judged items of one kind: how many there are of each, and whether it is so. */
export interface JudgedItem {
  readonly count: number
  readonly state: Outcome['state']
}

/**
 * Whether so many different items can be found for every want at once: two rings of two sizes are not met by two
 * of one size. An assignment is searched for; wants and items are few.
 *
 * @param wants for each want, how many are asked for and how each item fares against it
 * @returns `holds` where one exists, `unknown` where one would if what is not known turned out well, else `fails`
 */
export function assign(
  wants: readonly { readonly count: number; readonly items: readonly JudgedItem[] }[],
): 'holds' | 'unknown' | 'fails' {
  if (canAssign(wants, (item) => item.state === 'holds')) return 'holds'
  return canAssign(wants, (item) => item.state === 'holds' || item.state === 'unknown') ? 'unknown' : 'fails'
}

function canAssign(
  wants: readonly { readonly count: number; readonly items: readonly JudgedItem[] }[],
  fits: (item: JudgedItem) => boolean,
): boolean {
  const slots = wants.flatMap((want) => Array.from({ length: want.count }, () => want.items))
  const left = (slots[0] ?? []).map((item) => item.count)
  const fill = (slot: number): boolean => {
    const items = slots[slot]
    if (!items) return true
    return items.some((item, index) => {
      const remaining = left[index] ?? 0
      if (remaining < 1 || !fits(item)) return false
      left[index] = remaining - 1
      const done = fill(slot + 1)
      left[index] = remaining
      return done
    })
  }
  return fill(0)
}
