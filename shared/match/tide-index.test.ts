import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { depthLadder, limitAt, thresholdOf, type Threshold } from './thresholds'
import { indexTide, isWithin, shareWithin } from './tide-index'

const depth = fc.double({ min: 0, max: 40, noNaN: true })
const speed = fc.double({ min: 0, max: 4, noNaN: true })

/** The count asked moment by moment. */
function directShare(depthM: Float64Array, speedMps: Float64Array, thresholds: readonly Threshold[]): number {
  let held = 0
  depthM.forEach((d, i) => {
    if (isWithin(thresholds, d, speedMps[i] ?? NaN)) held++
  })
  return held / depthM.length
}

describe('share of the tide within limits', () => {
  test('is the count moment by moment, whatever the tide and the limits', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(depth, speed), { minLength: 1, maxLength: 400 }),
        fc.array(fc.array(speed, { minLength: 40, maxLength: 40 }), { minLength: 1, maxLength: 3 }),
        (moments, limits) => {
          const depthM = Float64Array.from(moments, ([d]) => d)
          const speedMps = Float64Array.from(moments, ([, s]) => s)
          const ladder = depthLadder(Math.min(...depthM), Math.max(...depthM))
          const thresholds = limits.map((values) => ({
            depthM: ladder,
            limitMps: Float64Array.from(values.slice(0, ladder.length)),
          }))
          const share = shareWithin(indexTide(depthM, speedMps, ladder), thresholds)
          expect(share).toBe(directShare(depthM, speedMps, thresholds))
        },
      ),
    )
  })

  test('a moment exactly on the limit holds, and one a hair above does not', () => {
    const ladder = depthLadder(10, 12)
    const flat = thresholdOf(ladder, () => 1)
    const index = indexTide(Float64Array.of(11, 11), Float64Array.of(1, 1 + 1e-9), ladder)
    expect(shareWithin(index, [flat])).toBe(0.5)
  })

  test('grows with the limit', () => {
    const ladder = depthLadder(5, 9)
    const depthM = Float64Array.from({ length: 1000 }, (_, i) => 7 + 2 * Math.sin(i / 50))
    const speedMps = Float64Array.from({ length: 1000 }, (_, i) => Math.abs(Math.cos(i / 50)))
    const index = indexTide(depthM, speedMps, ladder)
    const shares = [0, 0.2, 0.5, 0.9, 1.1].map((limit) =>
      shareWithin(index, [thresholdOf(ladder, (d) => limit * (1 + d / 100))]),
    )
    expect(shares).toEqual([...shares].sort((a, b) => a - b))
    expect(shares.at(-1)).toBe(1)
  })

  test('series of different length are a mistake', () => {
    expect(() => indexTide(new Float64Array(2), new Float64Array(3), depthLadder(1, 2))).toThrow(RangeError)
  })
})

describe('ladder of depths', () => {
  test('covers what it is asked to cover, and is the same for like depths', () => {
    fc.assert(
      fc.property(depth, depth, (a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a]
        const ladder = depthLadder(low, high)
        expect(ladder.length).toBeGreaterThan(1)
        if (low >= 0.5) {
          expect(ladder[0]).toBeLessThanOrEqual(low + 1e-9)
          expect(ladder.at(-1)).toBeGreaterThanOrEqual(high - 1e-9)
        }
      }),
    )
    expect(depthLadder(10.1, 11)).toEqual(depthLadder(10.3, 10.9))
  })

  test('between two depths the limit is on the straight line, beyond the ends it stays', () => {
    const threshold = { depthM: Float64Array.of(2, 4), limitMps: Float64Array.of(1, 3) }
    expect([1, 2, 3, 4, 9].map((d) => limitAt(threshold, d))).toEqual([1, 1, 2, 3, 3])
  })
})
