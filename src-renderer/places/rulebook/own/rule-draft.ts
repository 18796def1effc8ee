import type { Check } from '@shared/schema/rule-check'
import type { Rule } from '@shared/schema/rule-pack'
import { itemOf, ruleQuantities, type QuantityName } from '@shared/schema/rule-quantities'
import { ruleUnitNames, ruleUnits, type RuleUnitName } from '@shared/schema/rule-units'
import { emptySeason, seasonDrafts, seasonsOf, type SeasonDraft } from './season-draft'

/* What the form for a rule holds, and the check that it comes to. */

export const bodyKinds = ['number', 'flag', 'words', 'count', 'season', 'forbidden', 'shown'] as const
export type BodyKind = (typeof bodyKinds)[number]

export interface RuleBody {
  readonly kind: BodyKind
  readonly quantity: QuantityName
  readonly bound: 'min' | 'max'
  readonly value?: number | undefined
  readonly unit: RuleUnitName
  readonly flag: boolean
  readonly list: 'one-of' | 'none-of' | 'includes'
  readonly words: string
  readonly per: 'person' | 'licence' | 'boat' | 'crew'
  readonly pieces?: number | undefined
  readonly fromPeople?: number | undefined
  readonly season: 'open' | 'closed'
  readonly seasons: readonly SeasonDraft[]
  readonly reason: string
}

export const firstBody: RuleBody = {
  kind: 'number',
  quantity: 'rope.diameter',
  bound: 'min',
  unit: 'mm',
  flag: true,
  list: 'one-of',
  words: '',
  per: 'person',
  season: 'closed',
  seasons: [emptySeason],
  reason: '',
}

const kindsOf: Partial<Record<BodyKind, readonly string[]>> = { flag: ['flag'], words: ['text', 'list'] }

/** Quantities that a kind of rule can be about. */
export function quantitiesFor(kind: BodyKind): QuantityName[] {
  const names = Object.keys(ruleQuantities) as QuantityName[]
  const wanted = kindsOf[kind]
  return names.filter((name) => {
    const own = ruleQuantities[name].kind
    return wanted ? wanted.includes(own) : !['flag', 'text', 'list'].includes(own)
  })
}

/** Units that a quantity may be limited in. */
export function unitsFor(quantity: QuantityName): RuleUnitName[] {
  return ruleUnitNames.filter((unit) => ruleUnits[unit].kind === ruleQuantities[quantity].kind)
}

/** A body that fits together after its kind or quantity was changed: what no longer fits takes its first choice. */
export function fitted(body: RuleBody): RuleBody {
  const quantities = quantitiesFor(body.kind)
  const quantity = quantities.includes(body.quantity) ? body.quantity : (quantities[0] ?? body.quantity)
  const units = unitsFor(quantity)
  const unit = units.includes(body.unit) ? body.unit : (units[0] ?? body.unit)
  const list =
    body.kind === 'words' && body.list === 'includes' && ruleQuantities[quantity].kind !== 'list'
      ? 'one-of'
      : body.list
  return { ...body, quantity, unit, list }
}

/** How a rule with this body is told: checked, or read; undefined while something is left out. */
export function wayOf(body: RuleBody): Pick<Rule, 'check' | 'shown'> | undefined {
  if (body.kind === 'shown') return body.reason.trim() === '' ? undefined : { shown: body.reason.trim() }
  const check = checkOf(body)
  return check && { check: itemwise(check, body) }
}

function checkOf(body: RuleBody): Check | undefined {
  switch (body.kind) {
    case 'number':
      return body.value === undefined
        ? undefined
        : { op: body.bound, quantity: body.quantity, value: body.value, unit: body.unit }
    case 'flag':
      return { op: 'is', quantity: body.quantity, value: body.flag }
    case 'words': {
      const values = body.words.split(',').flatMap((word) => word.trim() || [])
      return values.length === 0 ? undefined : { op: body.list, quantity: body.quantity, values }
    }
    case 'count':
      return body.pieces === undefined
        ? undefined
        : {
            op: 'count',
            limits: [
              {
                per: body.per,
                value: body.pieces,
                ...(body.fromPeople === undefined ? {} : { fromPeople: body.fromPeople }),
              },
            ],
          }
    case 'season': {
      const seasons = seasonsOf(body.seasons)
      return seasons && seasons.length > 0 ? { op: body.season, seasons } : undefined
    }
    default:
      return { op: 'forbidden' }
  }
}

/** What is asked of an entrance, a gap or a rope weight is asked of every one. */
function itemwise(check: Check, body: RuleBody): Check {
  const item = 'quantity' in check ? itemOf(body.quantity) : undefined
  return item ? { op: 'every', of: item, where: check } : check
}

/** The form for a rule as it stands; undefined where its check is more than the form can hold. */
export function bodyOf(rule: Pick<Rule, 'check' | 'shown'>): RuleBody | undefined {
  if (rule.shown !== undefined) return { ...firstBody, kind: 'shown', reason: rule.shown }
  const check = rule.check?.op === 'every' ? rule.check.where : rule.check
  switch (check?.op) {
    case 'min':
    case 'max':
      return { ...firstBody, ...check, kind: 'number', bound: check.op }
    case 'is':
      return { ...firstBody, kind: 'flag', quantity: check.quantity, flag: check.value }
    case 'one-of':
    case 'none-of':
    case 'includes':
      return {
        ...firstBody,
        kind: 'words',
        quantity: check.quantity,
        list: check.op,
        words: check.values.join(', '),
      }
    case 'open':
    case 'closed':
      return { ...firstBody, kind: 'season', season: check.op, seasons: seasonDrafts(check.seasons) }
    case 'count':
      return countBody(check)
    case 'forbidden':
      return { ...firstBody, kind: 'forbidden' }
    default:
      return undefined
  }
}

/** One limit on pieces of every kind fits the form; several that hold together do not. */
function countBody({ kinds, limits }: Extract<Check, { op: 'count' }>): RuleBody | undefined {
  const [limit, ...more] = limits
  if (!limit || more.length > 0 || kinds || limit.fromLicences !== undefined) return undefined
  return { ...firstBody, kind: 'count', per: limit.per, pieces: limit.value, fromPeople: limit.fromPeople }
}
