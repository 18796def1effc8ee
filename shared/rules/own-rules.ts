import type { Check } from '@shared/schema/rule-check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import type { Species } from '@shared/schema/rule-species'
import { err, ok, type Result } from '@shared/units/result'
import { withFigure } from './figures'
import { ownNote } from './own-packs'
import { parsePack } from './pack'

/*
 * The user's own rules, laid over a shipped pack so that updates to the rest still come through. A rule with a
 * shipped id stands in for that rule and says since when and why; any other is added.
 */

/** An own pack with nothing in it yet, for a shipped one. */
export function emptyOwnPack(base: RulePack, today: string): RulePack {
  return {
    format: 'potwright/rules',
    version: 1,
    region: base.region,
    name: base.name,
    authority: base.authority,
    checkedOn: today.slice(0, 10),
    own: true,
    over: 'built-in',
    zones: [],
    sources: [ownNote(today)],
    rules: [],
    notFound: [],
    species: [],
  }
}

interface Shadow {
  readonly ruleId: string
  /**
   * Figures of the check, each by its place (see `figuresOf`), a whole check in its place, or nothing but the words:
   * then it is checked, or only read, as before.
   */
  readonly change:
    | { readonly figures: readonly { readonly path: string; readonly value: number }[] }
    | { readonly check: Check }
    | 'words'
  readonly says?: string
  readonly date: string
  readonly note?: string
}

/**
 * Puts the user's value in place of a shipped one: "I checked this on 3 December: the limit is …".
 *
 * @param own    the user's pack over this one
 * @param base   the shipped pack
 * @param shadow which rule, what it says now, when that was checked, and a note
 * @returns the user's pack with the shadow in it, or why it cannot be
 */
export function withShadow(own: RulePack, base: RulePack, shadow: Shadow): Result<RulePack> {
  const rule = base.rules.find((one) => one.id === shadow.ruleId)
  if (!rule)
    return err({
      code: 'not_found',
      message: `There is no rule ${shadow.ruleId} in ${base.name}.`,
      path: 'ruleId',
    })
  const way = wayOf(rule, shadow.change)
  if (!way)
    return err({
      code: 'invalid',
      message: 'This rule has no such figure to put another in its place. Nothing was changed.',
      path: 'change',
    })
  const mine: Rule = {
    ...withoutWay(rule),
    ...way,
    says: shadow.says ?? rule.says,
    confidence: 'read',
    sources: [0],
    user: {
      date: shadow.date,
      replaces: rule.says,
      ...(shadow.note === undefined ? {} : { note: shadow.note }),
    },
  }
  const next = { ...own, rules: [...own.rules.filter((one) => one.id !== rule.id), mine] }
  const read = parsePack(next)
  return read.ok ? ok(next) : read
}

type Way = Pick<Rule, 'check' | 'readings' | 'shown'>

/** How the changed rule is told: checked with the new figures, or as before where only the words are new. */
function wayOf({ check, readings, shown }: Rule, change: Shadow['change']): Way | undefined {
  if (change === 'words')
    return { ...(check ? { check } : {}), ...(readings ? { readings } : {}), ...(shown ? { shown } : {}) }
  if ('check' in change) return { check: change.check }
  const first = check ?? readings?.find((reading) => reading.check)?.check
  const changed = change.figures.reduce<Check | undefined>(
    (now, { path, value }) => now && withFigure(now, path, value),
    first,
  )
  return changed && { check: changed }
}

/** A rule without the way it is told, for another to be put in. */
function withoutWay(rule: Rule): Omit<Rule, 'check' | 'readings' | 'shown'> {
  const kept = { ...rule }
  delete kept.check
  delete kept.readings
  delete kept.shown
  return kept
}

/** The user's pack without one of its rules; a shipped rule of that id comes back into use. */
export function withoutRule(own: RulePack, ruleId: string): RulePack {
  return { ...own, rules: own.rules.filter((rule) => rule.id !== ruleId) }
}

/**
 * The rules in use: the shipped pack with the user's laid over it, each of theirs marked. A whole pack of the
 * user's stands in for the shipped one.
 *
 * @param base the shipped pack, where there is one
 * @param own  the user's
 * @returns the pack to judge by, or what does not fit together
 */
export function inUse(base: RulePack | undefined, own: RulePack): Result<RulePack> {
  if (own.over === undefined || !base) return ok({ ...own, own: true })
  const shift = base.sources.length
  const rules = own.rules.map((rule) => marked(rule, own.checkedOn, shift))
  const species = own.species.map((one) => moved(one, own.checkedOn, shift))
  const merged: RulePack = {
    ...base,
    zones: [...base.zones, ...own.zones.filter((zone) => !base.zones.some((one) => one.id === zone.id))],
    sources: [...base.sources, ...own.sources],
    rules: laidOver(base.rules, rules),
    species: laidOver(base.species, species),
    // What the user found is no longer not found.
    notFound: base.notFound.filter((gap) => !rules.some((rule) => rule.id === gap.id)),
  }
  return parsePack(merged)
}

function laidOver<T extends { readonly id: string }>(base: readonly T[], own: readonly T[]): T[] {
  const mine = new Map(own.map((one) => [one.id, one]))
  const replaced = base.map((one) => mine.get(one.id) ?? one)
  return [...replaced, ...own.filter((one) => !base.some((other) => other.id === one.id))]
}

function marked(rule: Rule, date: string, shift: number): Rule {
  return { ...rule, sources: rule.sources.map((index) => index + shift), user: rule.user ?? { date } }
}

const shifted = <T extends { readonly sources?: number[] | undefined }>(part: T, shift: number): T =>
  part.sources ? { ...part, sources: part.sources.map((index) => index + shift) } : part

function moved(one: Species, date: string, shift: number): Species {
  return {
    ...shifted(one, shift),
    user: one.user ?? { date },
    measure: shifted(one.measure, shift),
    sizes: one.sizes.map((size) => shifted(size, shift)),
    bags: one.bags.map((bag) => shifted(bag, shift)),
  }
}
