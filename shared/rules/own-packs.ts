import type { Rule, RulePack, RuleSource } from '@shared/schema/rule-pack'
import { ok, type Result } from '@shared/units/result'
import { parsePack } from './pack'

/*
 * Whole packs of the user's, and single rules put into them. A whole pack stands in for the shipped one of its region,
 * or covers a region that has none.
 */

interface PackHead {
  readonly region: string
  readonly name: string
  readonly authority: string
  /** Today, as a date or a time stamp. */
  readonly today: string
}

/** A pack of the user's with nothing in it yet: everything in it is unknown until a rule is added. */
export function blankPack({ region, name, authority, today }: PackHead): Result<RulePack> {
  const pack: RulePack = {
    format: 'potwright/rules',
    version: 1,
    region,
    name,
    authority,
    checkedOn: today.slice(0, 10),
    own: true,
    zones: [],
    sources: [ownNote(today)],
    rules: [],
    notFound: [{ what: 'everything that no rule was added on yet', subject: 'other', decides: true }],
    species: [],
  }
  return parsePack(pack)
}

/**
 * A copy of a pack as the user's own, under its region or another. It keeps the sources and the day on which they
 * were read: copying is not checking.
 */
export function copiedPack(
  pack: RulePack,
  { region, name, authority }: Omit<PackHead, 'today'>,
): Result<RulePack> {
  const copy: RulePack = { ...pack, region, name, authority, own: true }
  delete copy.over
  return parsePack(copy)
}

/**
 * Puts a rule of the user's into their pack, in place of one with its id or at the end.
 *
 * @param own    the user's pack
 * @param rule   the rule; its sources are replaced by `source`
 * @param source where the user has it from; left out, it is their own note
 * @returns the pack with the rule in it, or why it cannot be, with the path
 */
export function withRule(own: RulePack, rule: Omit<Rule, 'sources'>, source?: RuleSource): Result<RulePack> {
  const { pack, index } = withSource(own, source ?? ownNote(rule.user?.date ?? own.checkedOn))
  const mine: Rule = { ...rule, sources: [index] }
  const at = pack.rules.findIndex((one) => one.id === rule.id)
  const rules = at < 0 ? [...pack.rules, mine] : pack.rules.with(at, mine)
  const read = parsePack({ ...pack, rules })
  return read.ok ? ok({ ...pack, rules }) : read
}

/** The user's pack with a source in its list, and the place of it there. */
export function withSource(own: RulePack, source: RuleSource): { pack: RulePack; index: number } {
  const known = own.sources.findIndex((one) => JSON.stringify(one) === JSON.stringify(source))
  if (known >= 0) return { pack: own, index: known }
  return { pack: { ...own, sources: [...own.sources, source] }, index: own.sources.length }
}

/** The source of what the user writes down without another. */
export function ownNote(today: string): RuleSource {
  return { title: 'Your own note', kind: 'secondary', date: today.slice(0, 10) }
}

/** An id for a new rule of the user's that its pack does not use yet: `own-1`, `own-2`, … */
export function freshRuleId(...packs: readonly (RulePack | undefined)[]): string {
  const used = new Set(packs.flatMap((pack) => pack?.rules.map((rule) => rule.id) ?? []))
  let number = 1
  while (used.has(`own-${number}`)) number += 1
  return `own-${number}`
}
