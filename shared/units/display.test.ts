import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import {
  displayUnit,
  fieldText,
  formatMargin,
  formatNominal,
  formatQuantity,
  formatSpread,
  fromDisplay,
  significant,
  toDisplay,
} from './display'
import { decimalMarks, unitSystems, type ReaderLocale } from './locale'
import { typedNumber } from './typed-number'

const metric: ReaderLocale = { units: 'metric', decimalMark: '.' }
const imperial: ReaderLocale = { units: 'imperial', decimalMark: '.' }

// NIST SP 811 (2008), appendix B.8: exact factors.
test.each([
  [304.8, 'mm', 12],
  [1.8288, 'm', 6],
  [0.45359237, 'kg', 1],
  [1852 / 3600, 'm/s', 1],
  [4.4482216152605, 'N', 1],
  [0.09290304, 'm2', 1],
  [100, '°C', 212],
  [28.349523125, 'g', 1],
])('%d %s is shown as %d in imperial units', (stored, unit, shown) => {
  expect(toDisplay(stored, unit, 'imperial')).toBeCloseTo(shown, 12)
})

test('a value goes to display and back unchanged', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.constantFrom('mm', 'm', 'kg', 'N', 'm/s', '°C', 'h', 'deg'),
      fc.constantFrom(...unitSystems),
      (value, unit, system) => {
        expect(fromDisplay(toDisplay(value, unit, system), unit, system)).toBeCloseTo(value, 6)
      },
    ),
  )
})

test('an unknown unit is shown as it stands', () => {
  expect(displayUnit('pots', 'imperial')).toEqual({ symbol: 'pots', factor: 1, offset: 0, decimals: 2 })
  expect(formatQuantity(4, 'pots', imperial)).toBe('4 pots')
})

describe('reading', () => {
  test.each([
    [0.91234, '0.912'],
    [12.345, '12.3'],
    [1234, '1230'],
    [-0.00001, '-0.00001'],
    [0, '0'],
    [-0, '0'],
    [Number.NaN, '–'],
    [Infinity, '–'],
  ])('%d keeps three figures: %s', (value, text) => {
    expect(significant(value, '.')).toBe(text)
  })

  test('small lengths and masses are read in a smaller unit', () => {
    expect(formatQuantity(0.0043, 'm', metric)).toBe('4.3 mm')
    expect(formatQuantity(0.0043, 'm', imperial)).toBe('0.169 in')
    expect(formatMargin(-0.05, 'kg', metric)).toBe('−50 g')
    expect(formatQuantity(0, 'm', metric)).toBe('0 m')
  })

  test('quantities carry their unit', () => {
    expect(formatQuantity(108, 'mm', metric)).toBe('108 mm')
    expect(formatQuantity(108, 'mm', imperial)).toBe('4.25 in')
    expect(formatQuantity(90, 'deg', metric)).toBe('90°')
    expect(formatQuantity(1.25, '1', metric)).toBe('1.25')
  })

  test('a margin is always signed, and a difference of temperature has no offset', () => {
    expect(formatMargin(1.6, 'kg', metric)).toBe('+1.6 kg')
    expect(formatMargin(-0.8, 'mm', metric)).toBe('−0.8 mm')
    expect(formatMargin(0, 'mm', metric)).toBe('0 mm')
    expect(formatMargin(0.0127, 'm/s', metric)).toBe('+0.01 m/s')
    expect(formatMargin(-0.001, 'm/s', metric)).toBe('0 m/s')
    expect(formatMargin(10, '°C', imperial)).toBe('+18 °F')
  })

  test('a wide spread keeps two figures and names the likely value', () => {
    expect(formatSpread({ low: 0.61, mid: 0.904, high: 1.32 }, 'm/s', metric)).toBe(
      '0.61-1.3 m/s, likely 0.9',
    )
    expect(formatSpread({ low: 1.32, mid: 0.904, high: 0.61 }, 'm/s', metric)).toBe(
      '0.61-1.3 m/s, likely 0.9',
    )
    expect(formatSpread({ low: 101, mid: 103, high: 106 }, 'N', metric)).toBe('101-106 N, likely 103')
    expect(formatSpread({ low: 5, mid: 5, high: 5 }, 'N', metric)).toBe('5 N')
  })

  test('a field holds digits alone, to the decimals of its unit', () => {
    expect(fieldText(900, 'mm', metric)).toBe('900')
    expect(fieldText(900, 'mm', imperial)).toBe('35.433')
    expect(fieldText(0.1 + 0.2, 'm', metric)).toBe('0.3')
  })
})

describe('where a decimal stands behind a comma', () => {
  const comma: ReaderLocale = { units: 'metric', decimalMark: ',' }
  test('quantities, margins, spreads and fields have it', () => {
    expect(formatQuantity(0.912, 'm/s', comma)).toBe('0,91 m/s')
    expect(formatQuantity(0.0043, 'm', comma)).toBe('4,3 mm')
    expect(formatMargin(-0.8, 'mm', comma)).toBe('−0,8 mm')
    expect(formatSpread({ low: 0.61, mid: 0.904, high: 1.32 }, 'm/s', comma)).toBe('0,61-1,3 m/s, likely 0,9')
    expect(fieldText(900, 'mm', { ...comma, units: 'imperial' })).toBe('35,433')
    expect(formatNominal(9.5, comma)).toBe('9,5 mm')
  })
  test('whole numbers are not grouped, so a mark is always the decimal one', () => {
    expect(formatQuantity(12_345, 'N', comma)).toBe('12300 N')
    expect(formatNominal(1234.5, comma)).toBe('1234,5 mm')
    expect(fieldText(1_234_567, 'mm', comma)).toBe('1234567')
  })
})

test('what stands in a field is read back as the same number, and stands the same again', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -1e6, max: 1e6, noNaN: true }),
      fc.constantFrom('mm', 'm', 'kg', 'N', 'm/s', '°C', 'h', 'position', '1/day', ''),
      fc.record({ units: fc.constantFrom(...unitSystems), decimalMark: fc.constantFrom(...decimalMarks) }),
      (value, unit, locale) => {
        const { decimals } = displayUnit(unit, locale.units)
        const text = fieldText(value, unit, locale)
        const read = typedNumber(text)
        expect(read).toBeCloseTo(Number(toDisplay(value, unit, locale.units).toFixed(decimals)), 12)
        expect(fieldText(fromDisplay(read ?? NaN, unit, locale.units), unit, locale)).toBe(text)
      },
    ),
  )
})
