import { displayUnit, formatNominal, significant, toDisplay } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'

/** Quantities as the reader reads them, for sentences. */
export interface Words {
  /** "0.72 m/s" */
  with(value: number, unit: string): string
  /** "0.72", where the unit was just said. */
  bare(value: number, unit: string): string
  /** "23 m" for 22.1: what is asked for at least, so rounded up. */
  atLeast(value: number, unit: string): string
  /** "0.60-1.1 m/s" */
  range(low: number, high: number, unit: string): string
  /** "10 mm", the size of a bar, a rope or a float. */
  nominal(millimetres: number): string
}

/** Two figures: these are estimates, and the third would pretend. */
export function wordsIn(locale: ReaderLocale): Words {
  const { units, decimalMark } = locale
  const bare = (value: number, unit: string) => significant(toDisplay(value, unit, units), decimalMark, 2)
  const symbol = (unit: string) => displayUnit(unit, units).symbol
  return {
    bare,
    with: (value, unit) => (symbol(unit) === '' ? bare(value, unit) : `${bare(value, unit)} ${symbol(unit)}`),
    atLeast: (value, unit) =>
      `${significant(roundedUp(toDisplay(value, unit, units)), decimalMark, 2)} ${symbol(unit)}`.trim(),
    range: (low, high, unit) => {
      const [least, most] = [Math.min(low, high), Math.max(low, high)]
      const text =
        bare(least, unit) === bare(most, unit)
          ? bare(least, unit)
          : `${bare(least, unit)}-${bare(most, unit)}`
      return `${text} ${symbol(unit)}`.trim()
    },
    nominal: (millimetres) => formatNominal(millimetres, locale),
  }
}

/** Up to two figures; a hair over counts as none. */
function roundedUp(value: number): number {
  if (!(value > 0)) return value
  const step = 10 ** (Math.floor(Math.log10(value)) - 1)
  return Math.ceil(value / step - 1e-6) * step
}
