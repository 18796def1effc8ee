import { firstDay, lastDay } from '@shared/schema/rule-fields'
import { readDocument } from '@shared/schema/read-document'
import type { Check } from '@shared/schema/rule-check'
import { RulePackSchema, type Rule, type RulePack } from '@shared/schema/rule-pack'
import { itemOf, ruleQuantities, type ItemKind, type QuantityName } from '@shared/schema/rule-quantities'
import { ruleUnits } from '@shared/schema/rule-units'
import { err, type Result } from '@shared/units/result'

/**
 * Reads an unknown value as a rule pack, whole or not at all.
 *
 * Beyond the shape, refused with the path: an id used twice, a source or a zone that the pack does not list, a unit
 * that does not measure the quantity, an operator that does not fit it, an item's quantity outside a check of such
 * items, a rule that ends before it starts.
 *
 * @param raw what `JSON.parse` returned
 * @returns the pack, or the first thing wrong with it and where
 */
export function parsePack(raw: unknown): Result<RulePack> {
  const read = readDocument(RulePackSchema, raw, 'rule pack')
  if (!read.ok) return read
  const [problem] = problemsOf(read.value)
  if (!problem) return read
  return err({
    code: 'invalid',
    message: `This is not a rule pack that Potwright can use: ${problem.path} ${problem.says}. Nothing was changed.`,
    path: problem.path,
  })
}

interface Problem {
  readonly path: string
  readonly says: string
}

function* problemsOf(pack: RulePack): Generator<Problem> {
  yield* repeated([
    ...pack.rules.map((rule, index) => ({ id: rule.id, path: `rules.${index}.id` })),
    ...pack.notFound.map((gap, index) => ({ id: gap.id, path: `notFound.${index}.id` })),
    ...pack.species.map((one, index) => ({ id: one.id, path: `species.${index}.id` })),
  ])
  yield* repeated(pack.zones.map((zone, index) => ({ id: zone.id, path: `zones.${index}.id` })))
  for (const [index, rule] of pack.rules.entries()) yield* ruleProblems(rule, `rules.${index}`)
  yield* references(pack)
}

function* repeated(all: readonly { id: string | undefined; path: string }[]): Generator<Problem> {
  const seen = new Set<string>()
  for (const { id, path } of all) {
    if (id === undefined) continue
    if (seen.has(id)) yield { path, says: `uses the id ${id} a second time` }
    seen.add(id)
  }
}

function* ruleProblems(rule: Rule, path: string): Generator<Problem> {
  if (rule.from && rule.to && firstDay(rule.from) > lastDay(rule.to))
    yield { path: `${path}.to`, says: 'is before the rule starts' }
  for (const key of ['check', 'when', 'unless'] as const) {
    const check = rule[key]
    if (check) yield* checkProblems(check, `${path}.${key}`, undefined)
  }
  for (const [index, reading] of (rule.readings ?? []).entries())
    if (reading.check) yield* checkProblems(reading.check, `${path}.readings.${index}.check`, undefined)
}

/** Walks a check and what is nested in it; `inside` is the kind of item that is being looked at. */
function* checkProblems(check: Check, path: string, inside: ItemKind | undefined): Generator<Problem> {
  if ('quantity' in check) yield* quantityProblems(check, path, inside)
  if (check.op === 'every' || check.op === 'none')
    yield* checkProblems(check.where, `${path}.where`, check.of)
  if (check.op === 'has')
    for (const [index, want] of check.each.entries())
      yield* checkProblems(want.where, `${path}.each.${index}.where`, check.of)
  if (check.op === 'all-of' || check.op === 'any-of')
    for (const [index, one] of check.checks.entries())
      yield* checkProblems(one, `${path}.checks.${index}`, inside)
  if (check.op === 'not') yield* checkProblems(check.check, `${path}.check`, inside)
}

function* quantityProblems(
  check: Extract<Check, { quantity: QuantityName }>,
  path: string,
  inside: ItemKind | undefined,
): Generator<Problem> {
  const { kind } = ruleQuantities[check.quantity]
  const item = itemOf(check.quantity)
  if (item !== undefined && item !== inside)
    yield { path: `${path}.quantity`, says: `${check.quantity} is read only in a check of each ${item}` }
  if (check.op === 'max' || check.op === 'min') {
    if (ruleUnits[check.unit].kind !== kind)
      yield { path: `${path}.unit`, says: `${check.unit} does not measure ${check.quantity}` }
    return
  }
  const wanted =
    check.op === 'is'
      ? ['flag']
      : check.op === 'includes' || check.op === 'mentions'
        ? ['list']
        : ['text', 'list']
  if (!wanted.includes(kind)) yield { path: `${path}.op`, says: `${check.op} does not fit ${check.quantity}` }
}

function* references(pack: RulePack): Generator<Problem> {
  const zones = new Set(pack.zones.map((zone) => zone.id))
  const entries = [
    ...pack.rules.map((rule, index) => ({
      path: `rules.${index}`,
      sources: rule.sources,
      zones: [...(rule.applies?.zones ?? []), ...(rule.applies?.exceptZones ?? [])],
    })),
    ...pack.species.map((one, index) => ({
      path: `species.${index}`,
      sources: [one, one.measure, ...one.sizes, ...one.bags].flatMap((part) => part.sources ?? []),
      zones: [one, ...one.sizes, ...one.bags].flatMap((part) => part.zones ?? []),
    })),
    ...pack.notFound.map((gap, index) => ({
      path: `notFound.${index}`,
      sources: gap.sources ?? [],
      zones: [],
    })),
  ]
  for (const { path, sources, zones: named } of entries) {
    const source = sources.find((index) => index >= pack.sources.length)
    if (source !== undefined)
      yield { path: `${path}.sources`, says: `names source ${source}, which is not listed` }
    const zone = named.find((id) => !zones.has(id))
    // Rules laid over a shipped pack may name its zones; they are held against them once merged.
    if (zone !== undefined && pack.over === undefined)
      yield { path: `${path}.zones`, says: `names the zone ${zone}, which is not listed` }
  }
}

/** The pack, or a thrown bug: for packs that ship with the program and are tested. */
export function shippedPack(raw: unknown): RulePack {
  const read = parsePack(raw)
  if (!read.ok) throw new Error(read.error.message)
  return read.value
}
