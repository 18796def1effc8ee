import { expect, test } from 'vitest'
import { containerMeasures } from './container-measures'

// NIST Handbook 44, Appendix C, units of capacity: bushel 35.239 07 L, dry quart 1.101 221 L (four to the dry gallon),
// liquid gallon 3.785 412 L.
test('a bushel and a gallon of the United States hold what NIST says', () => {
  const [bushel, ...none] = containerMeasures({ unit: 'bushel', value: 1 }, 'US-MD')
  expect(bushel?.litres).toBeCloseTo(35.23907, 5)
  expect(none).toEqual([])
  const [dry, liquid] = containerMeasures({ unit: 'gallon', value: 1 }, 'US-FL')
  expect(dry).toMatchObject({ kind: 'dry' })
  expect(dry?.litres).toBeCloseTo(4 * 1.101221, 5)
  expect(liquid).toMatchObject({ kind: 'liquid' })
  expect(liquid?.litres).toBeCloseTo(3.785412, 6)
})

test('several of them hold as many times as much', () => {
  expect(containerMeasures({ unit: 'gallon-claws', value: 2 }, 'US-FL')[1]?.litres).toBeCloseTo(7.570824, 5)
})

test('another country, another unit, or no limit: nothing is said', () => {
  expect(containerMeasures({ unit: 'bushel', value: 1 }, 'GB-ENG')).toEqual([])
  expect(containerMeasures({ unit: 'crabs', value: 5 }, 'US-MD')).toEqual([])
  expect(containerMeasures({ unit: 'bushel', value: undefined }, 'US-MD')).toEqual([])
})
