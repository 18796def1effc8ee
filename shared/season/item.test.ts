import type { InstalledPart } from '@shared/schema/gear'
import { expect, test } from 'vitest'
import { costNew, itemOf, quantityOf } from './item'

const rope: InstalledPart = {
  ...{ id: 'r', kind: 'rope', material: 'PP', diameterMm: 8, lengthM: 20, cost: 18 },
  installedOn: '2026-04-01',
}
const price = (each: number, per: 'coil' | 'metre', coilM?: number) => ({
  'rope-pp-8mm': {
    ...{ item: 'rope-pp-8mm', at: '2026-04-01T08:00:00.000Z', id: 'e', each, per },
    ...(coilM === undefined ? {} : { coilM }),
  },
})

test('a part is stocked under its own name, else under what it is, what of and how thick', () => {
  expect(itemOf(rope)).toBe('rope-pp-8mm')
  expect(itemOf({ ...rope, item: 'blue-line' })).toBe('blue-line')
  const net = {
    id: 'n',
    kind: 'netting',
    material: 'PE (knotted)',
    barLengthMm: 25,
    installedOn: '2026-04-01',
  } as const
  expect(itemOf(net)).toBe('netting-pe-knotted-25mm-mesh')
  expect(itemOf({ id: 'f', kind: 'float', installedOn: '2026-04-01' })).toBe('float')
})

test('lines go by the metre, a cord by one where no length was written, the rest by the piece', () => {
  const { lengthM, ...unmeasured } = rope
  expect([quantityOf(rope), quantityOf(unmeasured)]).toEqual([lengthM, undefined])
  expect(quantityOf({ id: 'c', kind: 'release-cord', installedOn: '2026-04-01' })).toBe(1)
  expect(quantityOf({ id: 't', kind: 'tag', count: 3, installedOn: '2026-04-01' })).toBe(3)
  expect(quantityOf({ id: 't', kind: 'tag', installedOn: '2026-04-01' })).toBe(1)
})

test('new it costs its share of a coil or its metres, and what was paid where no price or length is known', () => {
  expect(costNew(rope, price(45, 'coil', 100))).toBeCloseTo(9, 12)
  expect(costNew(rope, price(0.5, 'metre'))).toBe(10)
  expect(costNew(rope, price(45, 'coil'))).toBe(18)
  expect(costNew(rope, {})).toBe(18)
  const { lengthM, cost, ...bare } = rope
  expect([lengthM, cost]).toEqual([20, 18])
  expect(costNew(bare, price(45, 'coil', 100))).toBeUndefined()
})
