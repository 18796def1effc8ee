import { displayUnit, formatQuantity, significant, toDisplay, type UnitSystem } from '@shared/units/display'

/** Quantities as the reader's units, for sentences. */
export interface Words {
  readonly system: UnitSystem
  /** "0.72 m/s" */
  with(value: number, unit: string): string
  /** "0.72", where the unit was just said. */
  bare(value: number, unit: string): string
  /** "23 m" for 22.1: what is asked for at least, so rounded up. */
  atLeast(value: number, unit: string): string
  /** "0.60-1.1 m/s" */
  range(low: number, high: number, unit: string): string
}

/** Two figures: these are estimates, and the third would pretend. */
export function wordsIn(system: UnitSystem): Words {
  const bare = (value: number, unit: string) => significant(toDisplay(value, unit, system), 2)
  const symbol = (unit: string) => displayUnit(unit, system).symbol
  return {
    system,
    bare,
    with: (value, unit) => (symbol(unit) === '' ? bare(value, unit) : `${bare(value, unit)} ${symbol(unit)}`),
    atLeast: (value, unit) =>
      `${significant(roundedUp(toDisplay(value, unit, system)), 2)} ${symbol(unit)}`.trim(),
    range: (low, high, unit) => {
      const [least, most] = [Math.min(low, high), Math.max(low, high)]
      const text =
        bare(least, unit) === bare(most, unit)
          ? bare(least, unit)
          : `${bare(least, unit)}-${bare(most, unit)}`
      return `${text} ${symbol(unit)}`.trim()
    },
  }
}

/** Up to two figures; a hair over counts as none. */
function roundedUp(value: number): number {
  if (!(value > 0)) return value
  const step = 10 ** (Math.floor(Math.log10(value)) - 1)
  return Math.ceil(value / step - 1e-6) * step
}

/** A bar, rope or float size: nominal, so as it is written. */
export const nominal = (words: Words, millimetres: number): string =>
  words.system === 'metric'
    ? `${Number(millimetres.toFixed(1))} mm`
    : formatQuantity(millimetres, 'mm', 'imperial')
