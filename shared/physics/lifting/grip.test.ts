import { expect, test } from 'vitest'
import { comfortablePull } from './grip'

test('100 N on 6 mm and thinner, 125 N on 7 mm, any pull from 8 mm on', () => {
  expect([4, 6, 7].map(comfortablePull)).toEqual([100, 100, 125])
  expect(comfortablePull(7.999)).toBeCloseTo(150, 1)
  expect([8, 12].map(comfortablePull)).toEqual([Infinity, Infinity])
})
