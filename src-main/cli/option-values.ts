import { plainLocale, unitSystems, type ReaderLocale } from '@shared/units/locale'
import { CommandRefused } from './command'

/** A whole number between two limits, or the one to take where none is given. */
export function wholeFrom(
  text: string | undefined,
  name: string,
  least: number,
  most: number,
  otherwise: number,
): number {
  if (text === undefined) return otherwise
  const value = Number(text)
  if (!Number.isInteger(value) || value < least || value > most)
    throw new CommandRefused(`--${name} must be a whole number from ${least} to ${most}, got ${text}`, name)
  return value
}

/** The units asked for; a command writes a full stop wherever it runs, so that scripts read it alike. */
export function localeFrom(text: string | undefined): ReaderLocale {
  const units = unitSystems.find((known) => known === (text ?? 'metric'))
  if (!units) throw new CommandRefused(`--units must be metric or imperial, got ${text ?? ''}`, 'units')
  return { ...plainLocale, units }
}
