import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { compareClocks, mergeClocks, nextClock, type VersionClock } from './version-clock'

const clock = fc.dictionary(
  fc.constantFrom('shed', 'office', 'boat'),
  fc.nat(4),
) as fc.Arbitrary<VersionClock>

describe('which of two versions came after the other', () => {
  test.each([
    [{}, {}, 'same'],
    [{ shed: 1 }, {}, 'after'],
    [{ shed: 1 }, { shed: 1, office: 1 }, 'before'],
    [{ shed: 2 }, { shed: 1, office: 1 }, 'apart'],
    [{ shed: 1, office: 0 }, { shed: 1 }, 'same'],
  ] as const)('%j against %j: %s', (a, b, order) => {
    expect(compareClocks(a, b)).toBe(order)
  })

  test('a version saved on top of others comes after each of them', () => {
    fc.assert(
      fc.property(fc.array(clock, { maxLength: 4 }), (seen) => {
        const next = nextClock('shed', seen)
        for (const one of seen) expect(compareClocks(next, one)).toBe('after')
      }),
    )
  })

  test('merging does not depend on the order, and comes after or equals each', () => {
    fc.assert(
      fc.property(fc.array(clock, { maxLength: 4 }), (clocks) => {
        const merged = mergeClocks(clocks)
        expect(mergeClocks([...clocks].reverse())).toEqual(merged)
        for (const one of clocks) expect(['same', 'after']).toContain(compareClocks(merged, one))
      }),
    )
  })

  test('swapping the two turns the answer round', () => {
    const turned = { same: 'same', apart: 'apart', after: 'before', before: 'after' }
    fc.assert(
      fc.property(clock, clock, (a, b) => {
        expect(compareClocks(b, a)).toBe(turned[compareClocks(a, b)])
      }),
    )
  })
})
