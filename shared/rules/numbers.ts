import type { Check } from '@shared/schema/rule-check'
import { ruleQuantities } from '@shared/schema/rule-quantities'
import { baseUnits, ruleUnits, type RuleUnitName } from '@shared/schema/rule-units'
import type { DecimalMark } from '@shared/units/locale'
import type { Outcome } from './outcome'
import { printedDifference, printedValue } from './printed'
import { quantityWords } from './words'

type NumberCheck = Extract<Check, { op: 'max' | 'min' }>

// A limit printed in inches, feet or yards has no finer meaning than a tenth of a millimetre.
const STEP_MM = 0.1

/**
 * A limit in the base unit of its kind. One converted from inches, feet or yards is rounded to 0.1 mm in the pot's
 * favour: up where it is a most, down where it is a least.
 *
 * @param value as printed, ≥ 0
 * @param unit  as printed
 * @param op    which side of the limit is allowed
 * @returns limit [mm, m2, L, g, h or a plain number]
 */
function limitInBase(value: number, unit: RuleUnitName, op: 'max' | 'min'): number {
  const { size, kind } = ruleUnits[unit]
  const exact = value * size
  const metric = kind !== 'length' || size === 1 || size === 10 || size === 1000
  if (metric) return exact
  const steps = exact / STEP_MM
  const rounded = op === 'max' ? Math.ceil(steps - 1e-6) : Math.floor(steps + 1e-6)
  return rounded / (1 / STEP_MM)
}

/**
 * Holds a number against a most or a least.
 *
 * margin = limit − value for a most, value − limit for a least; met where it is not negative.
 *
 * @param check       `max` or `min`, what was read, and the limit as printed
 * @param actual      value in the base unit of its kind
 * @param decimalMark of the sentence
 * @returns whether it holds, with both figures, the margin and the sentence
 */
export function compareNumber(
  { op, quantity, value, unit }: NumberCheck,
  actual: number,
  decimalMark: DecimalMark = '.',
): Outcome {
  const limit = limitInBase(value, unit, op)
  const margin = op === 'max' ? limit - actual : actual - limit
  // A millionth covers what floating point leaves of an exact match.
  const state = margin >= -1e-6 * Math.max(1, limit) ? 'holds' : 'fails'
  const words = quantityWords[quantity]
  const isAt = `${words.label} is ${printedValue(actual, unit, decimalMark)}`
  const fix = (op === 'max' ? words.less : words.more) ?? ''
  const isCount = ruleUnits[unit].kind === 'count'
  const direction = op === 'max' ? (isCount ? 'too many' : 'too much') : isCount ? 'too few' : 'too little'
  return {
    state,
    says:
      state === 'holds'
        ? `${isAt}.`
        : `${isAt}, ${printedDifference(-margin, unit, decimalMark)} ${direction}. ${fix}`.trim(),
    part: ruleQuantities[quantity].part,
    actual: tidy(actual),
    limit: tidy(limit),
    margin: tidy(margin),
    unit: baseUnits[ruleUnits[unit].kind],
  }
}

/** Drops what floating point adds past a millionth. */
const tidy = (value: number) => Math.round(value * 1e6) / 1e6
