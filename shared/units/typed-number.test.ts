import { expect, test } from 'vitest'
import { typedNumber } from './typed-number'

test.each([
  ['12', 12],
  [' 12,5 ', 12.5],
  // One mark is the decimal one, whichever it is: nothing that is shown is grouped.
  ['1,234', 1.234],
  ['1.234', 1.234],
  ['−3', -3],
  ['1/8', 0.125],
  ['2 3/16', 2.1875],
  ['6-1/4', 6.25],
  ['1e2', 100],
])('%j is %d', (text, value) => {
  expect(typedNumber(text)).toBe(value)
})

test.each([
  '1,234.5',
  '1.234,5',
  '1,234,567',
  '1 234',
  '',
  '  ',
  'abc',
  '1/0',
  '1/2/3',
  '/8',
  '2 3',
  'NaN',
  'Infinity',
  '6 1/4 in',
])('%j is no number', (text) => {
  expect(typedNumber(text)).toBeUndefined()
})
