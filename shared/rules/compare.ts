import type { Check } from '@shared/schema/rule-check'
import { subjects, type Rule, type RulePack, type Subject } from '@shared/schema/rule-pack'
import type { QuantityName } from '@shared/schema/rule-quantities'

/** What one region says on one row: its rules, that it was searched for in vain, or nothing at all. */
export interface ComparedCell {
  readonly region: string
  readonly rules: readonly Rule[]
  readonly state: 'rules' | 'not-found' | 'silent'
}

export interface ComparedRow {
  readonly subject: Subject
  /** What the row's rules measure, where they measure one thing; rules that are only read have none. */
  readonly quantity?: QuantityName
  readonly cells: readonly ComparedCell[]
  /** Whether the regions do not all ask the same. */
  readonly differs: boolean
}

/**
 * Rules of several regions side by side: a row for each thing that is asked of, in the order of the subjects. Rows
 * differ where a region asks something else, or does not ask.
 *
 * @param packs two or more, in the order of the columns
 */
export function comparePacks(packs: readonly RulePack[]): ComparedRow[] {
  const keys = new Map<string, { subject: Subject; quantity?: QuantityName }>()
  for (const pack of packs)
    for (const rule of pack.rules) {
      const quantity = quantityOf(rule)
      keys.set(keyOf(rule), { subject: rule.subject, ...(quantity ? { quantity } : {}) })
    }
  for (const pack of packs)
    for (const gap of pack.notFound)
      if (![...keys.values()].some((key) => key.subject === gap.subject))
        keys.set(gap.subject, { subject: gap.subject })
  const rows = [...keys].map(([key, what]) => {
    const cells = packs.map((pack) => cellOf(pack, key, what.subject))
    return { ...what, cells, differs: new Set(cells.map(asked)).size > 1 }
  })
  // Within a subject, what measures nothing first.
  return rows.toSorted(
    (a, b) =>
      subjects.indexOf(a.subject) - subjects.indexOf(b.subject) ||
      Number(a.quantity !== undefined) - Number(b.quantity !== undefined),
  )
}

const keyOf = (rule: Rule) => `${rule.subject}/${quantityOf(rule) ?? ''}`

function cellOf(pack: RulePack, key: string, subject: Subject): ComparedCell {
  const rules = pack.rules.filter((rule) => keyOf(rule) === key)
  if (rules.length > 0) return { region: pack.region, rules, state: 'rules' }
  const isUnknown = pack.notFound.some((gap) => gap.subject === subject)
  return { region: pack.region, rules, state: isUnknown ? 'not-found' : 'silent' }
}

/** What a cell asks, as a text to tell two cells apart: the checks, or the words where there is none. */
function asked(cell: ComparedCell): string {
  // A search in vain and silence both leave the rule unknown.
  if (cell.state !== 'rules') return ''
  return cell.rules
    .map((rule) =>
      JSON.stringify([rule.standing, rule.check ?? rule.readings?.map((one) => one.check) ?? rule.says]),
    )
    .toSorted()
    .join()
}

/** The first quantity that a rule's check, or the first reading that has one, measures. */
function quantityOf(rule: Rule): QuantityName | undefined {
  const check = rule.check ?? rule.readings?.find((reading) => reading.check)?.check
  return check && firstQuantity(check)
}

function firstQuantity(check: Check): QuantityName | undefined {
  if ('quantity' in check) return check.quantity
  if ('checks' in check) return firstOf(check.checks)
  if ('each' in check) return firstOf(check.each.map((want) => want.where))
  if ('where' in check) return firstQuantity(check.where)
  return 'check' in check ? firstQuantity(check.check) : undefined
}

function firstOf(checks: readonly Check[]): QuantityName | undefined {
  return checks.map(firstQuantity).find((quantity) => quantity !== undefined)
}
