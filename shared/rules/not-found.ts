import type { Finding } from '@shared/schema/check'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Facts } from './facts'
import { joined } from './sentence'

/** One finding for all subjects on which no rule was found for this gear, so that the list stays readable. */
export function notFoundFinding(
  pack: RulePack,
  { pot }: Facts,
): { readonly finding: Finding; readonly count: number; readonly decides: boolean } | undefined {
  const gaps = pack.notFound.filter((gap) => gap.gear?.includes(pot.gearKind) ?? true)
  if (gaps.length === 0) return undefined
  const what = joined(gaps.map((gap) => gap.what))
  return {
    count: gaps.length,
    decides: gaps.some((gap) => gap.decides === true),
    finding: {
      rule: `${pack.region}:not-found`,
      state: 'cannot-tell',
      what: `No rule was found on ${what}. That does not mean there is none.`,
      missing: `the rules on ${what}`,
      standing: 'law',
      source: { title: pack.authority, checkedOn: pack.checkedOn },
    },
  }
}
