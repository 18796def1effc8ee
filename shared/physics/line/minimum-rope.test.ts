import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { dragCatenary } from '@shared/physics/rope/exact-shapes'
import { anyLumpedLine, lumpedFloat, plainLine, solved } from './line-samples'
import { minimumRope } from './minimum-rope'

describe('least rope', () => {
  test('in still water it is the rise from the bridle to the surface', () => {
    for (const ropeWetWeightNpm of [-0.1, 0, 0.1]) {
      const still = plainLine({ surfaceCurrentMps: 0, ropeWetWeightNpm, potHeightM: 0.5 })
      expect(minimumRope(still, 0.5)).toBeCloseTo(19.5, 9)
    }
    // Rope of 15 N/m uses up half of 500 N before it comes down 19.5 m.
    expect(minimumRope(plainLine({ surfaceCurrentMps: 0, ropeWetWeightNpm: 15, potHeightM: 0.5 }), 0.5)).toBe(
      undefined,
    )
  })

  test('in a uniform stream it is that of the drag catenary', () => {
    const line = plainLine({ cdt: 0, float: lumpedFloat(40, 0) })
    const perMetre = 0.5 * 1025 * 1.2 * 0.008 * 0.8 ** 2
    const length = minimumRope(line, 1) ?? NaN
    expect(dragCatenary(40, perMetre, length).acrossM).toBeCloseTo(20, 5)
  })

  test('asks just the share it was found for', () => {
    fc.assert(
      fc.property(anyLumpedLine, between(0.3, 0.9), (problem, share) => {
        const ropeLengthM = minimumRope(problem, share) ?? NaN
        fc.pre(ropeLengthM < 400)
        const line = solved({ ...problem, ropeLengthM })
        expect(Math.abs(line.verticalN / (line.verticalN + line.reserveN) - share)).toBeLessThan(1e-4)
      }),
    )
  })

  test('there is none of heavy rope for a small float, nor for a line that cannot be solved', () => {
    const heavy = plainLine({ ropeWetWeightNpm: 5, float: lumpedFloat(20, 0.01) })
    expect(minimumRope(heavy, 0.5)).toBeUndefined()
    expect(minimumRope(plainLine({ depthM: 0 }), 0.5)).toBeUndefined()
    expect(minimumRope(plainLine({ surfaceCurrentMps: NaN }), 0.5)).toBeUndefined()
  })
})
