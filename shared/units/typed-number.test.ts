import { expect, test } from 'vitest'
import { typedNumber } from './typed-number'

test.each([
  ['12', 12],
  [' 12,5 ', 12.5],
  ['−3', -3],
  ['1/8', 0.125],
  ['2 3/16', 2.1875],
  ['6-1/4', 6.25],
  ['1e2', 100],
])('%j is %d', (text, value) => {
  expect(typedNumber(text)).toBe(value)
})

test.each(['', '  ', 'abc', '1/0', '1/2/3', '/8', '2 3', 'NaN', 'Infinity', '6 1/4 in'])(
  '%j is no number',
  (text) => {
    expect(typedNumber(text)).toBeUndefined()
  },
)
