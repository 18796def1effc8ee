import type { Check } from '@shared/schema/rule-check'
import type { QuantityName } from '@shared/schema/rule-quantities'
import type { RuleUnitName } from '@shared/schema/rule-units'
import { printedFigure } from './printed'

/** A figure in a check that a person may change, and its place in the check, as `checks.0.value`. */
export interface Figure {
  readonly path: string
  readonly value: number
  readonly unit: RuleUnitName
  readonly quantity?: QuantityName
}

/** Every figure of a check, in the order in which it is written. */
export function figuresOf(check: Check, at = ''): Figure[] {
  switch (check.op) {
    case 'max':
    case 'min':
      return [{ path: `${at}value`, value: check.value, unit: check.unit, quantity: check.quantity }]
    case 'count':
      return check.limits.map((limit, index) => ({
        path: `${at}limits.${index}.value`,
        value: limit.value,
        unit: 'count',
      }))
    case 'every':
    case 'none':
      return figuresOf(check.where, `${at}where.`)
    case 'has':
      return check.each.flatMap((want, index) => [
        { path: `${at}each.${index}.count`, value: want.count, unit: 'count' as const },
        ...figuresOf(want.where, `${at}each.${index}.where.`),
      ])
    case 'all-of':
    case 'any-of':
      return check.checks.flatMap((one, index) => figuresOf(one, `${at}checks.${index}.`))
    case 'not':
      return figuresOf(check.check, `${at}check.`)
    default:
      return []
  }
}

/** A check with one figure changed; undefined where there is none at that place. */
export function withFigure(check: Check, path: string, value: number): Check | undefined {
  if (!figuresOf(check).some((figure) => figure.path === path)) return undefined
  return replaced(check, path.split('.'), value) as Check
}

/**
 * A rule's sentence with one figure in place of another. Where the old one is not printed in it, the new one is said
 * after it, so that a sentence never stands with a figure that no longer holds.
 *
 * @param says   the sentence
 * @param figure the figure as it was
 * @param value  the new one, in the figure's unit
 */
export function reworded(says: string, figure: Figure, value: number): string {
  if (value === figure.value) return says
  // A rule's own words keep the full stop, whoever reads them.
  const asPrinted = (one: number) => printedFigure(one, figure.unit, '.')
  const [before, after] = [asPrinted(figure.value), asPrinted(value)]
  const at = new RegExp(`(?<![\\d./]|\\d )${before.replace(/[.*+?^${}()|[\]\\/]/g, '\\$&')}(?![\\d/])`)
  return at.test(says) ? says.replace(at, after) : `${says} Checked: ${after}.`
}

function replaced(node: unknown, [key, ...rest]: readonly string[], value: number): unknown {
  if (key === undefined) return value
  if (Array.isArray(node))
    return node.map((one, index) => (String(index) === key ? replaced(one, rest, value) : one))
  const fields = node as Record<string, unknown>
  return { ...fields, [key]: replaced(fields[key], rest, value) }
}
