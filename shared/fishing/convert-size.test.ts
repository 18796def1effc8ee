import fc from 'fast-check'
import { expect, test } from 'vitest'
import { convertSize } from './convert-size'
import { crabMeasures, crabSpecies, speciesBySlug } from './species'

const swimmer = speciesBySlug('portunus-armatus')
if (!swimmer) throw new Error('no blue swimmer')

test('115 mm over the notches is a shell of about 68 mm, near a length limit of 65 mm', () => {
  // 115 / 0.795 × 0.47 = 68.0 by way of the tip width; the notch proportion of its own gives 67.85.
  expect(convertSize(swimmer, 'notch-to-notch', 'length', 115)?.mid).toBeCloseTo(67.85, 2)
})

test('tip and notch width convert by what was measured on both', () => {
  expect(convertSize(swimmer, 'tip-to-tip', 'notch-to-notch', 86)?.mid).toBeCloseTo(68.4, 1)
  expect(convertSize(swimmer, 'notch-to-notch', 'tip-to-tip', 75)?.mid).toBeCloseTo(94.3, 1)
})

test('a way of measuring without a known proportion gives nothing', () => {
  const brown = speciesBySlug('cancer-pagurus')
  expect(brown && convertSize(brown, 'greatest-width', 'tip-to-tip', 150)).toBeUndefined()
})

test('the middle lies within the spread, there and back again lands on the start, and more is more', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...crabSpecies),
      fc.constantFrom(...crabMeasures),
      fc.constantFrom(...crabMeasures),
      fc.double({ min: 10, max: 300, noNaN: true }),
      (species, from, to, mm) => {
        const there = convertSize(species, from, to, mm)
        if (!there) return
        expect(there.low).toBeLessThanOrEqual(there.mid)
        expect(there.mid).toBeLessThanOrEqual(there.high)
        expect(convertSize(species, to, from, there.mid)?.mid).toBeCloseTo(mm, 6)
        expect(convertSize(species, from, to, mm + 1)?.mid).toBeGreaterThan(there.mid)
      },
    ),
  )
})
