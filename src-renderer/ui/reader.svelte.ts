import {
  displayUnit,
  fieldText,
  formatMargin,
  formatQuantity,
  formatSpread,
  fromDisplay,
  toDisplay,
  type UnitSystem,
} from '@shared/units/display'
import type { Finding, Spread } from '@shared/schema/check'

/** The reader's units, in one place, so that a field and a label never disagree. */
class Reader {
  units = $state<UnitSystem>('metric')

  symbol = (unit: string) => displayUnit(unit, this.units).symbol
  shown = (value: number, unit: string) => toDisplay(value, unit, this.units)
  stored = (shown: number, unit: string) => fromDisplay(shown, unit, this.units)
  field = (value: number, unit: string) => fieldText(value, unit, this.units)
  say = (value: number, unit: string) => formatQuantity(value, unit, this.units)
  sayMargin = (margin: number, unit: string) => formatMargin(margin, unit, this.units)
  /** What a finding has to spare; estimates spread too wide for more than two figures. */
  sayMarginOf = ({ margin, unit = '', standing }: Pick<Finding, 'margin' | 'unit' | 'standing'>) =>
    margin === undefined ? undefined : formatMargin(margin, unit, this.units, standing === 'law' ? 3 : 2)
  saySpread = (spread: Spread, unit: string) => formatSpread(spread, unit, this.units)
}

export const reader = new Reader()
