import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { dragCatenary } from '@shared/physics/rope/exact-shapes'
import { anyLumpedLine, lumpedFloat, plainLine, solved } from './line-samples'
import { pullUnderCurrent } from './pull-under'

describe('current that draws the float under', () => {
  test('of a neutral rope without drag along it, it is that of the drag catenary', () => {
    const line = plainLine({ cdt: 0, float: lumpedFloat(500, 0) })
    const found = pullUnderCurrent(line)
    const perMetre = 0.5 * 1025 * 1.2 * 0.008 * (found?.currentMps ?? NaN) ** 2
    expect(dragCatenary(500, perMetre, 30).acrossM / 20).toBeCloseTo(1, 6)
  })

  test('there the rope takes all the buoyancy', () => {
    fc.assert(
      fc.property(anyLumpedLine, (problem) => {
        const limit = pullUnderCurrent(problem)
        fc.pre(limit !== undefined && !limit.beyond && limit.currentMps > 0.05)
        expect(limit?.converged).toBe(true)
        const line = solved({ ...problem, surfaceCurrentMps: (limit?.currentMps ?? NaN) * (1 - 1e-5) })
        expect(line.state).toBe('surface')
        expect(line.reserveN).toBeLessThan(1e-3 * (line.verticalN + line.reserveN))
      }),
    )
  })

  test('a likely answer, right or wrong, leads to the same current', () => {
    const line = plainLine()
    const plain = pullUnderCurrent(line)?.currentMps ?? NaN
    for (const near of [plain, 0.5 * plain, 2 * plain, 0, -1, 8, 99])
      expect(pullUnderCurrent(line, 1, { near })?.currentMps).toBeCloseTo(plain, 6)
    expect(pullUnderCurrent(line, 1, { near: plain, tolerance: 0.02 })?.currentMps).toBeCloseTo(plain, 1)
    // Half the buoyancy is used up at the current divided by √2: all loads grow with its square.
    expect(pullUnderCurrent(line, 0.5)?.currentMps).toBeCloseTo(plain / Math.SQRT2, 5)
  })

  test('none is needed where the rope is shorter than the water is deep', () => {
    expect(pullUnderCurrent(plainLine({ ropeLengthM: 15 }))).toEqual({
      currentMps: 0,
      beyond: false,
      converged: true,
    })
  })

  test('none does it to a large float on a thin rope', () => {
    expect(pullUnderCurrent(plainLine({ ropeDiameterM: 0.0001, float: lumpedFloat(1e5, 0.01) }))).toEqual({
      currentMps: 8,
      beyond: true,
      converged: true,
    })
  })

  test('none is found for a line that cannot be solved', () => {
    expect(pullUnderCurrent(plainLine({ depthM: 0 }))).toBeUndefined()
  })
})
