import { significant } from '@shared/units/display'
import type { DecimalMark } from '@shared/units/locale'
import { baseUnits, ruleUnits, type NumberKind, type RuleUnitName } from '@shared/schema/rule-units'

const sixteenths = 16

/** Inches as a rule prints them, `2 3/16`, where they are whole sixteenths; else digits. */
function inches(value: number, decimalMark: DecimalMark): string {
  const parts = Math.round(value * sixteenths)
  if (Math.abs(value * sixteenths - parts) > 1e-9) return significant(value, decimalMark)
  const [whole, rest] = [Math.floor(parts / sixteenths), parts % sixteenths]
  if (rest === 0) return String(whole)
  const common = greatestDivisor(rest, sixteenths)
  const fraction = `${rest / common}/${sixteenths / common}`
  return whole === 0 ? fraction : `${whole} ${fraction}`
}

const greatestDivisor = (a: number, b: number): number => (b === 0 ? a : greatestDivisor(b, a % b))

const exact = (value: number, decimalMark: DecimalMark) =>
  Number.isInteger(value) ? String(value) : significant(value, decimalMark)

/** A figure alone as its source prints it: `1/8 in`, `150 mm`, `7 days`, `3`. */
export function printedFigure(value: number, unit: RuleUnitName, decimalMark: DecimalMark): string {
  const { symbol } = ruleUnits[unit]
  const digits = unit === 'in' ? inches(value, decimalMark) : exact(value, decimalMark)
  return symbol === '' ? digits : `${digits}${symbol === '%' ? '' : ' '}${plain(symbol, value)}`
}

/** A limit as its source prints it: `1/8 in (3.2 mm)`, `150 mm`, `13 cubic feet (368 L)`, `7 days`. */
export function printedLimit(value: number, unit: RuleUnitName, decimalMark: DecimalMark): string {
  const own = printedFigure(value, unit, decimalMark)
  if (!isImperial(unit)) return own
  return `${own} (${inBase(value * ruleUnits[unit].size, ruleUnits[unit].kind, decimalMark)})`
}

/** A value read off the gear [base unit], in the unit of the rule that it is held against. */
export function printedValue(base: number, unit: RuleUnitName, decimalMark: DecimalMark): string {
  const { symbol, size, kind } = ruleUnits[unit]
  if (kind === 'count') return exact(base, decimalMark)
  const own = `${significant(base / size, decimalMark)}${symbol === '' || symbol === '%' ? symbol : ` ${plain(symbol, base / size)}`}`
  return isImperial(unit) ? `${own} (${inBase(base, kind, decimalMark)})` : own
}

/** The difference between a value and its limit, alone in the rule's unit, no finer than a rule shows it. */
export function printedDifference(base: number, unit: RuleUnitName, decimalMark: DecimalMark): string {
  const { symbol, size, kind } = ruleUnits[unit]
  const digits =
    kind === 'count' ? exact(base, decimalMark) : significant(noFiner(base / size, unit), decimalMark)
  return symbol === '' || symbol === '%' ? `${digits}${symbol}` : `${digits} ${plain(symbol, base / size)}`
}

/** To a tenth of a millimetre or a hundredth of any other unit, unless nothing would be left. */
function noFiner(value: number, unit: RuleUnitName): number {
  return Number(value.toFixed(unit === 'mm' ? 1 : 2)) || value
}

const isImperial = (unit: RuleUnitName) => unit === 'in' || unit === 'ft' || unit === 'yd' || unit === 'ft3'

function inBase(base: number, kind: NumberKind, decimalMark: DecimalMark): string {
  if (kind === 'length' && base >= 2000) return `${significant(base / 1000, decimalMark)} m`
  return `${significant(base, decimalMark)} ${baseUnits[kind]}`
}

/** "1 day", not "1 days". */
function plain(symbol: string, value: number): string {
  if (value !== 1) return symbol
  return { days: 'day', hours: 'hour', 'cubic feet': 'cubic foot' }[symbol] ?? symbol
}
