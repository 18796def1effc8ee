import { type UnitSystem, unitSystems } from '@shared/units/display'
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

export function unitsFrom(text: string | undefined): UnitSystem {
  const units = unitSystems.find((known) => known === (text ?? 'metric'))
  if (!units) throw new CommandRefused(`--units must be metric or imperial, got ${text ?? ''}`, 'units')
  return units
}
