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
import type { Spread } from '@shared/schema/check'

/** The reader's units, in one place, so that a field and a label never disagree. */
class Reader {
  units = $state<UnitSystem>('metric')

  symbol = (unit: string) => displayUnit(unit, this.units).symbol
  shown = (value: number, unit: string) => toDisplay(value, unit, this.units)
  stored = (shown: number, unit: string) => fromDisplay(shown, unit, this.units)
  field = (value: number, unit: string) => fieldText(value, unit, this.units)
  say = (value: number, unit: string) => formatQuantity(value, unit, this.units)
  sayMargin = (margin: number, unit: string) => formatMargin(margin, unit, this.units)
  saySpread = (spread: Spread, unit: string) => formatSpread(spread, unit, this.units)
}

export const reader = new Reader()
