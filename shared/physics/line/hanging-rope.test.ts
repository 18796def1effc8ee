import { describe, expect, test } from 'vitest'
import { criticalAngle } from '@shared/physics/rope/exact-shapes'
import { coarseStep, fineStep, HangingRope, type Hanging } from './hanging-rope'
import { plainLine } from './line-samples'
import type { LineProblem } from './problem'

const hung = (
  change: Partial<LineProblem>,
  how: Partial<Hanging>,
  stopAtM?: number,
  tolerance = fineStep,
) => {
  const problem = plainLine(change)
  const rope = new HangingRope(problem, problem.surfaceCurrentMps, 100)
  rope.hang(
    { pullXN: 0, pullZN: 40, topM: problem.depthM, lengthM: problem.ropeLengthM, slackM: 0, ...how },
    stopAtM === undefined ? { tolerance } : { tolerance, stopAtM },
  )
  return rope
}

describe('a rope followed from its top', () => {
  test('heavy and trailing at the critical angle it stays straight', () => {
    const angle = criticalAngle(3, 0.5 * 1025 * 1.2 * 0.008)
    const [along, down] = [Math.cos(angle), Math.sin(angle)]
    const rope = hung(
      { surfaceCurrentMps: 1, cdt: 0, ropeWetWeightNpm: 3, depthM: 500, ropeLengthM: 300 },
      { pullXN: -2000 * along, pullZN: 2000 * down },
    )
    expect(rope.xM).toBeCloseTo(300 * along, 4)
    expect(rope.zM).toBeCloseTo(500 - 300 * down, 4)
    const left = Math.hypot(-2000 * along + rope.dragXN, 2000 * down + rope.dragZN - rope.weightN)
    expect(Math.abs(left - (2000 - 3 * 300 * down))).toBeLessThan(1e-6 * 2000)
    expect(rope.tensionMaxN).toBeCloseTo(2000, 9)
  })

  test('straight up and down in still water, to its end or to where it is told to stop', () => {
    expect(hung({ surfaceCurrentMps: 0 }, { lengthM: 12 })).toMatchObject({
      zM: 8,
      xM: 0,
      hungM: 12,
      groundedM: 0,
    })
    expect(hung({ surfaceCurrentMps: 0 }, {}, 3)).toMatchObject({ zM: 3, hungM: 17, groundedM: 0 })
    expect(hung({ surfaceCurrentMps: 0 }, {}, -10)).toMatchObject({ zM: -10, hungM: 30 })
    // Without any pull left a sinking rope hangs no farther, and the rest of it lies.
    const slack = hung({ surfaceCurrentMps: 0, ropeWetWeightNpm: 4 }, {})
    expect(slack).toMatchObject({ hungM: 10, zM: 10, groundedM: 20, xM: -20, weightN: 40 })
  })

  test('a floating rope pulls harder the deeper it reaches', () => {
    const rope = hung({ surfaceCurrentMps: 0, ropeWetWeightNpm: -0.5 }, { lengthM: 20 })
    expect(rope).toMatchObject({ zM: 0, tensionMaxN: 50, weightN: -10 })
  })

  test('in a stream it stops just at the height it is told', () => {
    for (const ropeWetWeightNpm of [-0.2, 0, 0.2]) {
      const change = { surfaceCurrentMps: 0.5, ropeWetWeightNpm }
      const stopped = hung(change, {}, 4)
      expect(stopped.zM).toBeCloseTo(4, 9)
      expect(stopped.hungM).toBeGreaterThan(16)
      expect(stopped.groundedM).toBe(0)
      // The same length hung up anew ends there.
      const anew = hung(change, { lengthM: stopped.hungM })
      expect(anew.zM).toBeCloseTo(4, 6)
      expect(anew.xM).toBeCloseTo(stopped.xM, 6)
      expect(anew.dragXN).toBeCloseTo(stopped.dragXN, 6)
    }
  })

  test('a sinking rope touches down where its upward pull ends', () => {
    const rope = hung({ surfaceCurrentMps: 0.3, ropeWetWeightNpm: 2 }, { pullXN: 1 })
    expect(rope.groundedM).toBeGreaterThan(5)
    expect(40 + rope.dragZN - rope.weightN).toBeCloseTo(0, 9)
    expect(rope.weightN).toBeCloseTo(2 * rope.hungM, 12)
    expect(rope.hungM + rope.groundedM).toBe(30)
  })

  test('weights below what hangs are not counted, those in the slack hang at its top', () => {
    const clumps = [
      { atFromFloatM: 2, wetWeightN: 3 },
      { atFromFloatM: 12, wetWeightN: 4 },
      { atFromFloatM: 25, wetWeightN: 5 },
    ]
    const change = { surfaceCurrentMps: 0, clumps }
    expect(hung(change, { lengthM: 20 }).weightN).toBe(7)
    expect(hung(change, { lengthM: 12 }).weightN).toBe(3)
    expect(hung(change, { lengthM: 10, slackM: 6 }).weightN).toBe(7)
    expect(hung(change, { lengthM: 22, slackM: 6 }).weightN).toBe(12)
  })

  test('a weight that takes all the pull rests, and the rope lies level from it', () => {
    const clumps = [{ atFromFloatM: 12, wetWeightN: 50 }]
    for (const surfaceCurrentMps of [0, 0.3]) {
      const rope = hung({ surfaceCurrentMps, clumps }, {})
      expect(rope).toMatchObject({ hungM: 12, groundedM: 18 })
      expect(40 + rope.dragZN - rope.weightN).toBeCloseTo(0, 9)
    }
    // Floating rope lifts it again, unless it has come down to the bed.
    const afloat = hung({ surfaceCurrentMps: 0, ropeWetWeightNpm: -0.5, clumps }, { lengthM: 30 })
    expect(afloat).toMatchObject({ groundedM: 0, hungM: 30, zM: 20 - 12 + 8 - 10 })
    const laid = hung({ surfaceCurrentMps: 0, ropeWetWeightNpm: -0.5, depthM: 12, clumps }, { lengthM: 30 })
    expect(laid).toMatchObject({ groundedM: 18, zM: 0, weightN: 40 })
  })

  test('a closer rope than six hundred steps can follow is given up, and says so', () => {
    expect(hung({}, {}, undefined, 1e-40).complete).toBe(false)
    expect(hung({}, {}).complete).toBe(true)
    expect(hung({}, {}, undefined, coarseStep).zM).toBeCloseTo(hung({}, {}).zM, 2)
  })
})
