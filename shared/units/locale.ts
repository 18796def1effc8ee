export const unitSystems = ['metric', 'imperial'] as const
export type UnitSystem = (typeof unitSystems)[number]

export const decimalMarks = ['.', ','] as const
export type DecimalMark = (typeof decimalMarks)[number]

/** How a person reads quantities: in which units, and with which mark between the whole and its fraction. */
export interface ReaderLocale {
  readonly units: UnitSystem
  readonly decimalMark: DecimalMark
}

/** Where no reader is known, and in everything that a program reads: files, tables, the command line. */
export const plainLocale: ReaderLocale = { units: 'metric', decimalMark: '.' }

/**
 * The decimal mark of a locale. With European digits, which Potwright writes throughout, every locale has a full
 * stop or a comma.
 *
 * @param tag BCP 47 language tag, as `de-AT`
 * @throws RangeError where the tag is not well formed
 * @source Unicode CLDR, number symbols, as the platform carries them
 */
export function decimalMarkOf(tag: string): DecimalMark {
  const parts = new Intl.NumberFormat(tag, { numberingSystem: 'latn' }).formatToParts(0.5)
  return parts.some(({ type, value }) => type === 'decimal' && value === ',') ? ',' : '.'
}

/** Digits written with a full stop, with the reader's mark instead. */
export const withMark = (digits: string, decimalMark: DecimalMark): string => digits.replace('.', decimalMark)
