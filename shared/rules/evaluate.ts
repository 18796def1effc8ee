import type { Check } from '@shared/schema/rule-check'
import { ruleQuantities, type ItemKind, type QuantityName } from '@shared/schema/rule-quantities'
import type { PartName } from '@shared/schema/check'
import { compareRun, compareSeason, compareWeekday } from './calendar'
import { compareCount } from './counts'
import { itemsOf, type Facts, type Reading } from './facts'
import { gearNames } from './gear-names'
import { compareHours } from './hours'
import { hasItems } from './items'
import { compareWords } from './lists'
import { compareNumber } from './numbers'
import { allOf, anyOf, opposite, type Outcome } from './outcome'
import { quantityReaders } from './quantities'
import { quantityWords } from './words'

/**
 * Holds one check against the facts of a trip.
 *
 * What cannot be read off the gear, the trip or the water makes it `unknown`, never `holds`; a part that is stated
 * not to be there makes a check of that part's measures `absent`.
 *
 * @param check one of the closed set of operators
 * @param facts the gear, the trip, the water
 * @returns the outcome with value, limit, margin and the words for a finding
 */
export function evaluate(check: Check, facts: Facts): Outcome {
  switch (check.op) {
    case 'max':
    case 'min':
      return onReading(check.quantity, facts, (value) =>
        compareNumber(check, Number(value), facts.decimalMark),
      )
    case 'is':
      return onReading(check.quantity, facts, (value) =>
        compareFlag(check.quantity, value === true, check.value),
      )
    case 'one-of':
    case 'none-of':
    case 'only':
    case 'includes':
    case 'mentions':
      return onReading(check.quantity, facts, (value) =>
        compareWords(check.op, check.quantity, wordsOf(value), check.values),
      )
    case 'count':
      return compareCount(check, facts.pot.gearKind, facts.trip)
    case 'gear':
      return compareGear(check, facts)
    case 'open':
    case 'closed':
      return compareSeason(check, facts.trip?.date)
    case 'closed-days':
      return compareWeekday(check, facts.trip?.date)
    case 'closed-from':
      return compareRun(check, facts.trip?.date)
    case 'hours':
      return compareHours(check, facts)
    case 'forbidden':
      return { state: 'fails', says: '', part: 'trip' }
    case 'every':
      return overItems(check.of, facts, (each) =>
        allOf(
          each.map((item) => evaluate(check.where, item)),
          partOf[check.of],
        ),
      )
    case 'none':
      return overItems(check.of, facts, (each) =>
        noneOf(
          each.map((item) => evaluate(check.where, item)),
          check.where,
          check.of,
        ),
      )
    case 'has': {
      const found = itemsOf(facts, check.of)
      if ('missing' in found) return { state: 'unknown', missing: [found.missing], part: partOf[check.of] }
      return hasItems(
        check.of,
        partOf[check.of],
        check.each.map((want) => ({
          count: want.count,
          items: found.items.map((item) => ({
            count: item.count,
            outcome: evaluate(want.where, item.facts),
          })),
        })),
      )
    }
    case 'all-of':
      return allOf(
        check.checks.map((one) => evaluate(one, facts)),
        'body',
      )
    case 'any-of':
      return anyOf(
        check.checks.map((one) => evaluate(one, facts)),
        'body',
      )
    case 'not':
      return opposite(evaluate(check.check, facts))
  }
}

const partOf: Record<ItemKind, PartName> = {
  entrance: 'entrances',
  gap: 'escape-gaps',
  'rope-weight': 'rope',
}

type Value = Extract<Reading, { value: unknown }>['value']

function onReading(quantity: QuantityName, facts: Facts, compare: (value: Value) => Outcome): Outcome {
  const reading = quantityReaders[quantity](facts)
  const { part } = ruleQuantities[quantity]
  if ('missing' in reading) return { state: 'unknown', missing: [reading.missing], part }
  return 'absent' in reading ? { state: 'absent', part } : compare(reading.value)
}

function wordsOf(value: Value): string | readonly string[] {
  return typeof value === 'object' || typeof value === 'string' ? value : String(value)
}

function compareFlag(quantity: QuantityName, actual: boolean, wanted: boolean): Outcome {
  const { less, more } = quantityWords[quantity]
  const holds = actual === wanted
  return {
    state: holds ? 'holds' : 'fails',
    says: holds ? '' : ((wanted ? more : less) ?? ''),
    part: ruleQuantities[quantity].part,
    actual,
    limit: wanted,
  }
}

function compareGear(check: Extract<Check, { op: 'gear' }>, { pot }: Facts): Outcome {
  const kind = pot.gearKind
  const one = gearNames[kind]
  const decided = (state: 'holds' | 'fails', says: string): Outcome => ({
    state,
    says,
    part: 'body',
    actual: kind,
  })
  if (check.banned?.includes(kind))
    return decided(
      'fails',
      check.possession ? `This is ${one}: do not even carry it.` : `This is ${one}: use other gear.`,
    )
  if (check.allowed?.includes(kind)) return decided('holds', `This is ${one}.`)
  if (check.otherwise === 'cannot-tell')
    return { state: 'unknown', missing: [`whether ${one} is allowed here`], part: 'body' }
  return decided(
    check.otherwise,
    check.otherwise === 'fails' ? `This is ${one}: use other gear.` : `This is ${one}.`,
  )
}

function overItems(kind: ItemKind, facts: Facts, judge: (each: readonly Facts[]) => Outcome): Outcome {
  const found = itemsOf(facts, kind)
  if ('missing' in found) return { state: 'unknown', missing: [found.missing], part: partOf[kind] }
  return judge(found.items.map((item) => item.facts))
}

function noneOf(outcomes: readonly Outcome[], where: Check, kind: ItemKind): Outcome {
  const part = partOf[kind]
  const fix = where.op === 'is' ? (quantityWords[where.quantity].less ?? '') : ''
  if (outcomes.some((outcome) => outcome.state === 'holds')) return { state: 'fails', says: fix, part }
  const unknown = outcomes.filter((outcome) => outcome.state === 'unknown')
  if (unknown.length > 0)
    return { state: 'unknown', missing: [...new Set(unknown.flatMap((one) => one.missing))], part }
  return { state: 'holds', says: '', part }
}
