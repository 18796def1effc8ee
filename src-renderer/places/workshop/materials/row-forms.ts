import { nettingMaterials, ropeMaterials } from '@shared/schema/pot'
import { solidUses, type Materials } from '@shared/schema/materials'

/** A field of a row as it is asked for. */
export type RowField =
  | { readonly kind: 'text'; readonly key: string; readonly label: string }
  | {
      readonly kind: 'number'
      readonly key: string
      readonly label: string
      readonly unit: string
      readonly min: number
      readonly max: number
      readonly optional?: true
    }
  | {
      readonly kind: 'choice'
      readonly key: string
      readonly label: string
      readonly options: readonly string[]
    }
  | {
      readonly kind: 'uses'
      readonly key: string
      readonly label: string
      readonly options: readonly string[]
    }

export type TableName = keyof Materials

const text = (key: string, label: string): RowField => ({ kind: 'text', key, label })
const choice = (key: string, label: string, options: readonly string[]): RowField => ({
  ...{ kind: 'choice', key, label, options },
})
const number = (
  key: string,
  label: string,
  unit: string,
  [min, max]: readonly [number, number],
): Extract<RowField, { kind: 'number' }> => ({ kind: 'number', key, label, unit, min, max })
const optional = (field: Extract<RowField, { kind: 'number' }>): RowField => ({ ...field, optional: true })
const diameter = (range: readonly [number, number]) => number('diameterMm', 'Diameter', 'mm', range)

/** What each table asks of a row, besides its id and its source; bounds are those of the saved form. */
export const rowForms: Readonly<
  Record<TableName, { readonly title: string; readonly fields: readonly RowField[] }>
> = {
  solids: {
    title: 'Solids',
    fields: [
      text('name', 'Name'),
      number('densityKgM3', 'Density', 'kg/m³', [10, 20000]),
      { kind: 'uses', key: 'uses', label: 'Used for', options: solidUses },
    ],
  },
  bars: {
    title: 'Bars',
    fields: [
      text('material', 'Material, by its id'),
      diameter([1, 60]),
      number('massKgPerM', 'Mass of a metre', 'kg', [0.001, 50]),
    ],
  },
  ropes: {
    title: 'Ropes',
    fields: [
      choice('material', 'Material', ropeMaterials),
      diameter([2, 40]),
      number('massKgPer100M', 'Mass of 100 m', 'kg', [0.01, 500]),
      number('breakingKn', 'Breaks at', 'kN', [0.05, 2000]),
    ],
  },
  twines: {
    title: 'Netting twines and wires',
    fields: [
      choice('material', 'Material', nettingMaterials),
      diameter([0.3, 8]),
      number('rtex', 'Mass of a kilometre', 'g', [10, 100000]),
    ],
  },
  floats: {
    title: 'Floats',
    fields: [
      text('name', 'Name'),
      choice('shape', 'Shape', ['sphere', 'cylinder', 'bullet']),
      diameter([20, 1500]),
      optional(number('lengthMm', 'Length, if not round', 'mm', [20, 2000])),
      number('massKg', 'Mass', 'kg', [0, 50]),
      choice('material', 'Material', ['PVC', 'EPS', 'EVA', 'PE', 'cork', 'wood']),
    ],
  },
  cords: {
    title: 'Release cords',
    fields: [
      text('name', 'Name'),
      choice('material', 'Material', ['cotton', 'jute', 'sisal', 'hemp', 'synthetic']),
      diameter([0.2, 20]),
      number('massKgPer100M', 'Mass of 100 m', 'kg', [0.001, 50]),
    ],
  },
  baitHolders: {
    title: 'Bait holders',
    fields: [
      text('name', 'Name'),
      choice('holder', 'Kind', ['clip', 'mesh-bag', 'wire-basket', 'jar']),
      number('massKg', 'Mass', 'kg', [0, 5]),
      diameter([5, 500]),
      number('heightMm', 'Height', 'mm', [5, 500]),
      number('densityKgM3', 'Density', 'kg/m³', [10, 20000]),
    ],
  },
  prices: {
    title: 'Prices',
    fields: [
      text('id', 'For, by the id of a row'),
      choice('each', 'For each', ['piece', 'metre', 'kilogram', 'square-metre']),
      number('amount', 'Price', '', [0, 100000]),
      text('currency', 'Currency, as AUD'),
    ],
  },
}

export const tableNames = Object.keys(rowForms) as TableName[]
