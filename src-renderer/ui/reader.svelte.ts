import {
  displayUnit,
  fieldText,
  formatMargin,
  formatQuantity,
  formatSpread,
  fromDisplay,
  significant,
  toDisplay,
} from '@shared/units/display'
import { decimalMarkOf, type DecimalMark, type ReaderLocale, type UnitSystem } from '@shared/units/locale'
import type { Finding, Spread } from '@shared/schema/check'
import { clockAt } from '@shared/tides/local-time'

function clockHours(): 12 | 24 {
  return new Intl.DateTimeFormat(undefined, { hour: 'numeric' }).resolvedOptions().hour12 ? 12 : 24
}

/** How the reader writes quantities, in one place, so that a field and a label never disagree. */
class Reader {
  units = $state<UnitSystem>('metric')
  /** Of the locale in which days and money are written too. */
  decimalMark = $state<DecimalMark>(decimalMarkOf(new Intl.NumberFormat().resolvedOptions().locale))
  /** Hours of the clock in that locale. */
  hours = $state<12 | 24>(clockHours())
  locale = $derived<ReaderLocale>({ units: this.units, decimalMark: this.decimalMark })

  symbol = (unit: string) => displayUnit(unit, this.units).symbol
  shown = (value: number, unit: string) => toDisplay(value, unit, this.units)
  stored = (shown: number, unit: string) => fromDisplay(shown, unit, this.units)
  /** Digits alone, to three figures or two; of a number that has no unit, or whose unit was just said. */
  digits = (value: number, figures: 2 | 3 = 3) => significant(value, this.decimalMark, figures)
  field = (value: number, unit: string) => fieldText(value, unit, this.locale)
  say = (value: number, unit: string) => formatQuantity(value, unit, this.locale)
  sayMargin = (margin: number, unit: string) => formatMargin(margin, unit, this.locale)
  /** What a finding has to spare; estimates spread too wide for more than two figures. */
  sayMarginOf = ({ margin, unit = '', standing }: Pick<Finding, 'margin' | 'unit' | 'standing'>) =>
    margin === undefined ? undefined : formatMargin(margin, unit, this.locale, standing === 'law' ? 3 : 2)
  /** Time of day at a place. */
  clock = (zone: string, timeMs: number) => clockAt(zone, timeMs, { hours: this.hours })
  clockWithZone = (zone: string, timeMs: number) =>
    clockAt(zone, timeMs, { hours: this.hours, withZone: true })
  saySpread = (spread: Spread, unit: string) => formatSpread(spread, unit, this.locale)
}

export const reader = new Reader()
