import type { Check } from '@shared/schema/rule-check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'

/** The permits and standings that a region's rules ask about, by the names the rules give them. */
export function permitsAsked(pack: RulePack | undefined): string[] {
  return [...new Set((pack?.rules ?? []).flatMap(permitsOf))]
}

function permitsOf({ applies, when, unless, check }: Rule): string[] {
  const named = [when, unless, check].flatMap((one) => (one ? permitsIn(one) : []))
  return applies?.holds === undefined ? named : [applies.holds, ...named]
}

function permitsIn(check: Check): string[] {
  switch (check.op) {
    case 'all-of':
    case 'any-of':
      return check.checks.flatMap(permitsIn)
    case 'not':
      return permitsIn(check.check)
    case 'one-of':
    case 'none-of':
    case 'only':
    case 'includes':
    case 'mentions':
      return check.quantity === 'trip.holds' ? check.values : []
    default:
      return []
  }
}

type Answer = 'yes' | 'no'

/** Whether a permit is held; undefined while nothing was said of permits. */
export const holdsPermit = (held: readonly string[] | undefined, permit: string): Answer | undefined =>
  held === undefined ? undefined : held.includes(permit) ? 'yes' : 'no'

/** The permits held after one more answer. Taking an answer back takes all back: a trip's list is whole or not there. */
export function withPermit(
  held: readonly string[] | undefined,
  permit: string,
  answer: Answer | undefined,
): string[] | undefined {
  if (answer === undefined) return undefined
  const others = (held ?? []).filter((one) => one !== permit)
  return answer === 'yes' ? [...others, permit] : others
}
