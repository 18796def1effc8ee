import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { bracketUpwards } from './bracket'
import { brentRoot } from './brent-root'
import { compensatedSum } from './compensated-sum'
import { polishedRoot } from './polished-root'
import { interpolate } from './interpolation'

describe('Brent root', () => {
  test('finds the root of cos x = x to the last digits', () => {
    const found = brentRoot((x) => Math.cos(x) - x, 0, 1)
    expect(found.root).toBeCloseTo(0.7390851332151607, 11)
    expect(found.converged).toBe(true)
    expect(found.evaluations).toBeLessThan(12)
  })

  test('keeps to the limit of evaluations and says so', () => {
    let calls = 0
    const found = brentRoot(
      (x) => {
        calls += 1
        return x ** 3 - 2
      },
      0,
      1e6,
      { maxEvaluations: 6 },
    )
    expect(calls).toBe(6)
    expect(found).toMatchObject({ converged: false, evaluations: 6 })
  })

  test('ends of one sign do not converge, nor does a function that is not a number', () => {
    expect(brentRoot((x) => x * x + 1, -1, 1)).toMatchObject({ converged: false, evaluations: 2 })
    expect(brentRoot(() => NaN, -1, 1).converged).toBe(false)
    expect(brentRoot((x) => (x === 2 || x === -2 ? x : NaN), -2, 2)).toMatchObject({
      converged: false,
      root: 2,
    })
  })

  test('takes known end values without asking again, and a zero at an end at once', () => {
    let calls = 0
    const f = (x: number) => {
      calls += 1
      return x - 0.3
    }
    expect(brentRoot(f, 0, 1, { endValues: [-0.3, 0.7] }).root).toBeCloseTo(0.3, 12)
    expect(calls).toBe(1)
    expect(brentRoot((x) => x, 0, 1)).toMatchObject({ root: 0, converged: true, evaluations: 2 })
    expect(brentRoot((x) => x - 1, 0, 1)).toMatchObject({ root: 1, converged: true, evaluations: 2 })
  })

  test('a small residual is enough when asked for', () => {
    const found = brentRoot((x) => x ** 3, -1, 2, { residualTolerance: 1e-3 })
    expect(Math.abs(found.residual)).toBeLessThanOrEqual(1e-3)
    expect(found.converged).toBe(true)
  })

  test('closes in on a jump', () => {
    const found = brentRoot((x) => (x < 0.123 ? -1 : 1), 0, 1, { tolerance: 1e-9 })
    expect(found.converged).toBe(true)
    expect(found.root).toBeCloseTo(0.123, 8)
  })

  test('any monotone cubic, from either end', () => {
    fc.assert(
      fc.property(fc.double({ min: -5, max: 5, noNaN: true }), fc.boolean(), (root, swap) => {
        const f = (x: number) => (x - root) * (1 + (x - root) ** 2)
        const found = swap ? brentRoot(f, 6, -6) : brentRoot(f, -6, 6)
        expect(found.converged).toBe(true)
        expect(Math.abs(found.root - root)).toBeLessThan(1e-10)
      }),
    )
  })
})

describe('polished root', () => {
  test('settles from close by, and says where the function was asked last', () => {
    let last = NaN
    const found = polishedRoot(
      (x) => {
        last = x
        return Math.exp(x) - 2
      },
      0.69,
      0,
      2,
    )
    expect(found?.root).toBeCloseTo(Math.LN2, 8)
    expect(found?.root).toBe(last)
    expect(found?.residual).toBe(Math.exp(last) - 2)
  })
  test('keeps inside the interval, from its upper half too', () => {
    expect(polishedRoot((x) => x - 1.9, 1.8, 0, 2)?.root).toBeCloseTo(1.9, 8)
    const asked: number[] = []
    polishedRoot((x) => asked.push(x) && Math.sqrt(x + 1), 0.5, 0, 2)
    expect(asked.every((x) => x >= 0 && x <= 2)).toBe(true)
  })
  test('gives up where the function is flat or jumps about', () => {
    expect(polishedRoot(() => 1, 0.5, 0, 1)).toBeUndefined()
    let sign = 1
    expect(polishedRoot(() => (sign *= -1.5), 0.5, 0, 1)).toBeUndefined()
  })
})

describe('bracket', () => {
  test('widens until the sign changes', () => {
    const found = bracketUpwards((x) => x - 10, 0, 1, 100)
    expect(found).toEqual({ from: 7, to: 15, endValues: [-3, 5] })
  })
  test('stops at the limit', () => {
    let furthest = 0
    const none = bracketUpwards(
      (x) => {
        furthest = Math.max(furthest, x)
        return 1
      },
      0,
      1,
      9,
    )
    expect(none).toBeUndefined()
    expect(furthest).toBe(9)
  })
})

describe('compensated sum', () => {
  test('keeps the small terms that a plain sum loses', () => {
    expect(compensatedSum([1, 1e100, 1, -1e100])).toBe(2)
    expect(compensatedSum([])).toBe(0)
    expect(compensatedSum(Array.from({ length: 10 }, () => 0.1))).toBe(1)
  })
})

describe('interpolation', () => {
  const table = [
    [0, 1],
    [2, 5],
    [4, 5],
  ] as const
  test.each([
    [-1, 1],
    [0, 1],
    [1, 3],
    [2, 5],
    [3, 5],
    [9, 5],
  ])('at %d reads %d', (x, y) => {
    expect(interpolate(table, x)).toBe(y)
  })
  test('an empty table throws', () => {
    expect(() => interpolate([], 1)).toThrow(RangeError)
  })
})
