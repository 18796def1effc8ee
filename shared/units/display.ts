import { withMark, type DecimalMark, type ReaderLocale, type UnitSystem } from './locale'

/*
 * The edge where stored units meet the reader's. A stored unit is the one in a field's name (`Mm`, `M`, `Kg`…);
 * findings and fields name it by its symbol.
 */

/** How a stored unit is shown: shown = stored · factor + offset, in `symbol`, typed to `decimals` places. */
export interface DisplayUnit {
  readonly symbol: string
  readonly factor: number
  readonly offset: number
  readonly decimals: number
}

const asStored = (symbol: string, decimals: number): DisplayUnit => ({
  symbol,
  factor: 1,
  offset: 0,
  decimals,
})
const scaled = (symbol: string, factor: number, decimals: number): DisplayUnit => ({
  symbol,
  factor,
  offset: 0,
  decimals,
})

// Exact by definition: inch 25.4 mm, foot 0.3048 m, pound 0.45359237 kg, nautical mile 1852 m.
const MM_PER_INCH = 25.4
const M_PER_FOOT = 0.3048
const KG_PER_POUND = 0.45359237
export const MPS_PER_KNOT = 1852 / 3600
const N_PER_POUND_FORCE = KG_PER_POUND * 9.80665

const metric: Record<string, DisplayUnit> = {
  mm: asStored('mm', 1),
  m: asStored('m', 2),
  // Rules print inches to sixteenths: four places.
  in: asStored('in', 4),
  'm/s': asStored('m/s', 2),
  kg: asStored('kg', 2),
  g: asStored('g', 0),
  N: asStored('N', 1),
  m2: asStored('m²', 2),
  h: asStored('h', 1),
  s: asStored('s', 1),
  d: asStored('days', 0),
  '°C': asStored('°C', 1),
  deg: asStored('°', 0),
  // Rates of rot are thousandths a day.
  '1/day': asStored('1/day', 4),
  // Latitude and longitude: four places are eleven metres.
  position: asStored('°', 4),
  '1': asStored('', 2),
  '': asStored('', 2),
}

const imperial: Record<string, DisplayUnit> = {
  ...metric,
  mm: scaled('in', 1 / MM_PER_INCH, 3),
  m: scaled('ft', 1 / M_PER_FOOT, 1),
  'm/s': scaled('kn', 1 / MPS_PER_KNOT, 2),
  kg: scaled('lb', 1 / KG_PER_POUND, 2),
  g: scaled('oz', 16 / (KG_PER_POUND * 1000), 1),
  N: scaled('lbf', 1 / N_PER_POUND_FORCE, 1),
  m2: scaled('ft²', 1 / M_PER_FOOT ** 2, 1),
  '°C': { symbol: '°F', factor: 9 / 5, offset: 32, decimals: 0 },
}

/**
 * How quantities stored in one unit are shown in a system of units.
 *
 * @param unit   symbol of the stored unit, as `mm` or `m/s`; one that is not known is shown as it stands
 * @param system the reader's choice
 * @returns symbol, factor and offset, and the decimals a field of this unit is typed to
 */
export function displayUnit(unit: string, system: UnitSystem): DisplayUnit {
  return (system === 'imperial' ? imperial : metric)[unit] ?? asStored(unit, 2)
}

/** Stored value to the reader's unit: shown = stored · factor + offset. */
export function toDisplay(value: number, unit: string, system: UnitSystem): number {
  const { factor, offset } = displayUnit(unit, system)
  return value * factor + offset
}

/** The reader's value back to the stored unit: stored = (shown − offset) / factor. */
export function fromDisplay(shown: number, unit: string, system: UnitSystem): number {
  const { factor, offset } = displayUnit(unit, system)
  return (shown - offset) / factor
}

/** A difference in the reader's unit: the factor applies, the offset does not. */
function toDisplayDifference(value: number, unit: string, system: UnitSystem): number {
  return value * displayUnit(unit, system).factor
}

/**
 * A value as it stands in a field: rounded to the decimals of its unit, with no idle zeros.
 *
 * @param value stored value, finite
 * @returns digits alone, without the unit, never grouped; `typedNumber` reads them back
 */
export function fieldText(value: number, unit: string, { units, decimalMark }: ReaderLocale): string {
  const { decimals } = displayUnit(unit, units)
  return withMark(String(Number(toDisplay(value, unit, units).toFixed(decimals))), decimalMark)
}

/**
 * Digits of a number for reading: three significant figures at most, or two where the spread is wide.
 *
 * Whole numbers above 999 keep their digits' places, rounded: 1234 reads as 1230.
 */
export function significant(value: number, decimalMark: DecimalMark, figures: 2 | 3 = 3): string {
  if (!Number.isFinite(value)) return '–'
  const rounded = Number(value.toPrecision(figures))
  return Object.is(rounded, -0) ? '0' : withMark(plainDigits.format(rounded), decimalMark)
}

// Made once: a formatter takes longer to make than to use.
const plainDigits = new Intl.NumberFormat('en', { maximumFractionDigits: 6, useGrouping: false })

/** A quantity for reading, as `12.5 mm`, no finer than its unit is typed; a unit-less one is the digits alone. */
export function formatQuantity(value: number, unit: string, locale: ReaderLocale): string {
  const finer = finerUnit(value, unit)
  if (finer) return formatQuantity(value * 1000, finer, locale)
  const { units, decimalMark } = locale
  const { symbol, decimals } = displayUnit(unit, units)
  return withSymbol(significant(toPlaces(toDisplay(value, unit, units), decimals), decimalMark), symbol)
}

/** The size of a bar, a rope or a float [mm]: nominal, so as it is written, where that is in millimetres. */
export function formatNominal(millimetres: number, locale: ReaderLocale): string {
  return locale.units === 'metric'
    ? `${fieldText(millimetres, 'mm', locale)} mm`
    : formatQuantity(millimetres, 'mm', locale)
}

/**
 * A margin for reading, always signed, as `+1.2 kg` or `−0.4 m/s`.
 *
 * @param figures two where the margin comes of an estimate with a wide spread
 */
export function formatMargin(margin: number, unit: string, locale: ReaderLocale, figures: 2 | 3 = 3): string {
  const finer = finerUnit(margin, unit)
  if (finer) return formatMargin(margin * 1000, finer, locale, figures)
  const { units, decimalMark } = locale
  const { symbol, decimals } = displayUnit(unit, units)
  const shown = toDisplayDifference(margin, unit, units)
  const digits = significant(toPlaces(Math.abs(shown), decimals), decimalMark, figures)
  const sign = digits === '0' ? '' : shown < 0 ? '−' : '+'
  return withSymbol(`${sign}${digits}`, symbol)
}

/**
 * A spread for reading, as `0.6-1.3 m/s, likely 0.9`; two figures where the ends differ by more than half of the
 * middle. Ends that read the same give the plain quantity.
 *
 * @param spread low and high in any order, and the middle, in the stored unit
 */
export function formatSpread(
  spread: { readonly low: number; readonly mid: number; readonly high: number },
  unit: string,
  { units, decimalMark }: ReaderLocale,
): string {
  const [low, mid, high] = [spread.low, spread.mid, spread.high].map((x) => toDisplay(x, unit, units)) as [
    number,
    number,
    number,
  ]
  const figures = Math.abs(high - low) > Math.abs(mid) / 2 ? 2 : 3
  const digits = (x: number) => significant(x, decimalMark, figures)
  const [least, most] = [Math.min(low, high), Math.max(low, high)].map(digits)
  const { symbol } = displayUnit(unit, units)
  if (least === most) return withSymbol(digits(mid), symbol)
  return `${withSymbol(`${least}-${most}`, symbol)}, likely ${digits(mid)}`
}

/** Metres and kilograms too small to read are read in thousandths. */
function finerUnit(value: number, unit: string): string | undefined {
  if (value === 0 || Math.abs(value) >= 0.1) return undefined
  return { m: 'mm', kg: 'g' }[unit]
}

/** No finer than a field of the unit is typed: a margin of 0.0127 m/s reads as 0.01. */
function toPlaces(shown: number, decimals: number): number {
  return Number.isFinite(shown) ? Number(shown.toFixed(decimals)) : shown
}

function withSymbol(digits: string, symbol: string): string {
  if (symbol === '') return digits
  return symbol === '°' ? `${digits}°` : `${digits} ${symbol}`
}
