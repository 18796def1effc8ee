/*
 * Units a rule may be printed in. A pack keeps the figure as its source prints it; everything is compared in the
 * base unit of its kind.
 */

export type NumberKind = 'length' | 'area' | 'volume' | 'mass' | 'time' | 'count' | 'ratio'
export type QuantityKind = NumberKind | 'flag' | 'text' | 'list'

interface RuleUnit {
  readonly kind: NumberKind
  /** Size of one unit in the base unit of its kind. */
  readonly size: number
  /** How it is written after a figure. */
  readonly symbol: string
}

/** Base unit of each kind of number: what findings carry. */
export const baseUnits: Record<NumberKind, string> = {
  length: 'mm',
  area: 'm2',
  volume: 'L',
  mass: 'g',
  time: 'h',
  count: '',
  ratio: '',
}

// Exact by definition: inch 25.4 mm, foot 304.8 mm, yard 914.4 mm; a cubic foot is 28.316846592 L.
export const ruleUnits = {
  mm: { kind: 'length', size: 1, symbol: 'mm' },
  cm: { kind: 'length', size: 10, symbol: 'cm' },
  m: { kind: 'length', size: 1000, symbol: 'm' },
  in: { kind: 'length', size: 25.4, symbol: 'in' },
  ft: { kind: 'length', size: 304.8, symbol: 'ft' },
  yd: { kind: 'length', size: 914.4, symbol: 'yd' },
  m2: { kind: 'area', size: 1, symbol: 'm²' },
  L: { kind: 'volume', size: 1, symbol: 'L' },
  m3: { kind: 'volume', size: 1000, symbol: 'm³' },
  ft3: { kind: 'volume', size: 28.316846592, symbol: 'cubic feet' },
  g: { kind: 'mass', size: 1, symbol: 'g' },
  kg: { kind: 'mass', size: 1000, symbol: 'kg' },
  h: { kind: 'time', size: 1, symbol: 'hours' },
  day: { kind: 'time', size: 24, symbol: 'days' },
  count: { kind: 'count', size: 1, symbol: '' },
  ratio: { kind: 'ratio', size: 1, symbol: '' },
  percent: { kind: 'ratio', size: 0.01, symbol: '%' },
} as const satisfies Record<string, RuleUnit>

export type RuleUnitName = keyof typeof ruleUnits
export const ruleUnitNames = Object.keys(ruleUnits) as RuleUnitName[]

/** A printed figure in the base unit of its kind, by exact factors. */
export function toBase(value: number, unit: RuleUnitName): number {
  return value * ruleUnits[unit].size
}
