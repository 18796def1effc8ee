import { markFields, type Marks } from '@shared/schema/pot'
import type { Check } from '@shared/schema/rule-check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import { toBase } from '@shared/schema/rule-units'
import { applies } from './applies'
import { evaluate } from './evaluate'
import { factsOf, type LegalCase } from './facts'

export type LabelPlace = 'float' | 'tag' | 'ropeTag'
type MarkField = NonNullable<Marks['float']>['fields'][number]

/** What one label has to give. */
export interface LabelDemand {
  readonly fields: readonly MarkField[]
  /** Words that must stand on it, as a gear code. */
  readonly texts: readonly string[]
}

export interface LabelDemands {
  readonly labels: Readonly<Record<LabelPlace, LabelDemand>>
  /** The least height of letters [mm], where a rule gives one. */
  readonly letterHeightMm?: number
  readonly contrasting: boolean
  /** The rules that ask for it, to be read beside the labels. */
  readonly rules: readonly Rule[]
}

/**
 * What the float, the tag on the pot and the tag on the rope have to give in a region.
 *
 * Gathers the marking rules that apply, or may apply. Where a rule leaves a choice, the way that the design already
 * meets is taken, else the first; where sources disagree, the first reading that asks for something. A mark that may
 * stand anywhere goes on the float.
 *
 * @param pack  the region's rules
 * @param legal the design, and trip and water where they are known
 * @returns fields in the order of a name and address, the greatest letter height, and the rules themselves
 */
export function labelDemands(pack: RulePack, legal: LegalCase): LabelDemands {
  const facts = factsOf(legal)
  const rules = pack.rules.filter((rule) => rule.subject === 'marking' && applies(rule, pack, facts) !== 'no')
  const demands = rules.flatMap((rule) => {
    const check = rule.check ?? rule.readings?.find((reading) => reading.check)?.check
    return check ? demandsOf(check, (one) => evaluate(one, facts).state === 'holds') : []
  })
  const heights = demands.flatMap((one) => (one.kind === 'height' ? [one.mm] : []))
  const label = (place: LabelPlace): LabelDemand => {
    const here = demands.filter((one) => one.kind === 'label' && one.place === place)
    const asked = new Set(here.flatMap((one) => (one.kind === 'label' ? one.fields : [])))
    return {
      fields: markFields.filter((field) => asked.has(field)),
      texts: [...new Set(here.flatMap((one) => (one.kind === 'label' ? one.texts : [])))],
    }
  }
  return {
    labels: { float: label('float'), tag: label('tag'), ropeTag: label('ropeTag') },
    ...(heights.length > 0 ? { letterHeightMm: Math.max(...heights) } : {}),
    contrasting: demands.some((one) => one.kind === 'contrast'),
    rules,
  }
}

type Demand =
  | {
      readonly kind: 'label'
      readonly place: LabelPlace
      readonly fields: readonly string[]
      readonly texts: readonly string[]
    }
  | { readonly kind: 'height'; readonly mm: number }
  | { readonly kind: 'contrast' }

const placeOf: Readonly<Record<string, LabelPlace>> = {
  'marks.float': 'float',
  'marks.anywhere': 'float',
  'marks.float-text': 'float',
  'marks.tag': 'tag',
  'marks.tag-text': 'tag',
  'marks.rope-tag': 'ropeTag',
}

function demandsOf(check: Check, isMet: (check: Check) => boolean): Demand[] {
  switch (check.op) {
    case 'all-of':
      return check.checks.flatMap((one) => demandsOf(one, isMet))
    case 'any-of': {
      const asking = check.checks.filter((one) => demandsOf(one, isMet).length > 0)
      const way = asking.find(isMet) ?? asking[0]
      return way ? demandsOf(way, isMet) : []
    }
    case 'includes':
    case 'mentions': {
      const place = placeOf[check.quantity]
      if (!place) return []
      const asText = check.op === 'mentions' || check.quantity.endsWith('-text')
      const [fields, texts] = asText ? [[], check.values] : [check.values, []]
      return [{ kind: 'label', place, fields, texts }]
    }
    case 'min':
      return check.quantity === 'marks.letter-height'
        ? [{ kind: 'height', mm: toBase(check.value, check.unit) }]
        : []
    case 'is':
      return check.quantity === 'marks.contrasting' && check.value ? [{ kind: 'contrast' }] : []
    default:
      return []
  }
}
