import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { criticalAngle, dragCatenary, straightLine } from '@shared/physics/rope/exact-shapes'
import { solveLine, type LineProblem, type LineSolution } from './line'
import { fineStep, HangingRope } from './hanging-rope'
import { followByOdex } from './line-by-odex'
import { anyLine, anyLumpedLine, anyWeightedLine, lumpedFloat, plainLine } from './line-samples'
import { minimumRope } from './minimum-rope'
import { pullUnderCurrent } from './pull-under'
import { slackAtSlackWater } from './slack-water'

function solved(problem: LineProblem): LineSolution {
  const result = solveLine(problem)
  if (result.state === 'failed') throw new Error(result.reason)
  return result
}

describe('exact limits', () => {
  test('without rope weight and drag the rope is straight', () => {
    const { dragAreaM2, buoyancyN } = { dragAreaM2: 0.05, buoyancyN: 40 }
    const drag = 0.5 * 1025 * dragAreaM2
    const exact = straightLine(10, buoyancyN, drag)
    const line = solved(
      plainLine({
        surfaceCurrentMps: 1,
        depthM: 10,
        ropeLengthM: 10,
        cdn: 0,
        cdt: 0,
        float: lumpedFloat(buoyancyN, dragAreaM2),
      }),
    )
    expect(line.state).toBe('under')
    expect(line.dipM).toBeCloseTo(exact.dipM, 7)
    expect(line.offsetM).toBeCloseTo(exact.offsetM, 7)
    expect(Math.abs(line.tensionMaxN - exact.tensionN)).toBeLessThan(1e-6 * exact.tensionN)
  })

  test('a neutral rope with drag across it only is a catenary about the stream, its tension constant', () => {
    const problem = plainLine({ cdt: 0, float: lumpedFloat(500, 0) })
    const line = solved(problem)
    const perMetre = 0.5 * 1025 * 1.2 * 0.008 * 0.8 ** 2
    // No float drag: the rope leaves the float square to the stream.
    const exact = dragCatenary(line.verticalN, perMetre, problem.ropeLengthM)
    expect(Math.abs(exact.acrossM - 20)).toBeLessThan(1e-6 * 20)
    expect(Math.abs(exact.alongM - line.offsetM)).toBeLessThan(1e-6 * 20)
    expect(Math.abs(line.tensionMaxN - line.verticalN)).toBeLessThan(1e-6 * line.verticalN)
    const below = Math.hypot(line.potHorizontalN, line.potUpliftN)
    expect(Math.abs(below - line.verticalN)).toBeLessThan(1e-6 * line.verticalN)
  })

  test('of a neutral rope in a uniform stream the shape stays and the forces grow with U²', () => {
    const slow = solved(plainLine({ surfaceCurrentMps: 0.4, float: lumpedFloat(5000, 0.02) }))
    const fast = solved(plainLine({ surfaceCurrentMps: 1.2, float: lumpedFloat(5000, 0.02) }))
    expect(Math.abs(fast.offsetM - slow.offsetM)).toBeLessThan(1e-6 * slow.offsetM)
    for (const force of ['verticalN', 'potHorizontalN', 'potUpliftN', 'tensionMaxN'] as const)
      expect(Math.abs(fast[force] / slow[force] - 9)).toBeLessThan(9e-6)
  })

  test('a heavy rope that trails at the critical angle stays straight', () => {
    const problem = plainLine({ surfaceCurrentMps: 1, cdt: 0, ropeWetWeightNpm: 3, depthM: 500 })
    const angle = criticalAngle(3, 0.5 * 1025 * 1.2 * 0.008)
    const rope = new HangingRope(problem, 1, 1000)
    const [along, down] = [Math.cos(angle), Math.sin(angle)]
    rope.hang(
      { pullXN: -2000 * along, pullZN: 2000 * down, topM: 500, lengthM: 300, slackM: 0 },
      { tolerance: fineStep },
    )
    expect(rope.xM).toBeCloseTo(300 * along, 4)
    expect(rope.zM).toBeCloseTo(500 - 300 * down, 4)
    const left = Math.hypot(-2000 * along + rope.dragXN, 2000 * down + rope.dragZN - rope.weightN)
    expect(Math.abs(left - (2000 - 3 * 300 * down))).toBeLessThan(1e-6 * 2000)
  })

  test('still water: the rope hangs plumb and the rest lies on the bed', () => {
    const line = solved(
      plainLine({
        surfaceCurrentMps: 0,
        ropeWetWeightNpm: 0.1,
        float: lumpedFloat(40, 0.02),
        potHeightM: 0.5,
      }),
    )
    expect(line.verticalN).toBeCloseTo(1.95, 9)
    expect(line.onBottomM).toBeCloseTo(10.5, 9)
    expect(line.potUpliftN).toBeCloseTo(0, 9)
    expect(line.potHorizontalN).toBe(0)
  })

  test('still water: a floating rope stands over the pot and the rest lies on the surface', () => {
    const problem = plainLine({ surfaceCurrentMps: 0, ropeWetWeightNpm: -0.1, float: lumpedFloat(40, 0.02) })
    const line = solved(problem)
    expect(line).toMatchObject({ state: 'surface', verticalN: 0, reserveN: 40 })
    expect(line.slackSurfaceM).toBeCloseTo(10, 9)
    expect(line.potUpliftN).toBeCloseTo(2, 9)
    expect(slackAtSlackWater({ ...problem, surfaceCurrentMps: 2 })).toBeCloseTo(10, 9)
  })

  test('still water: a rope too short holds the float under', () => {
    const line = solved(
      plainLine({
        surfaceCurrentMps: 0,
        ropeLengthM: 18,
        ropeWetWeightNpm: 0.1,
        float: lumpedFloat(40, 0.02),
      }),
    )
    expect(line.state).toBe('under')
    expect(line.dipM).toBeCloseTo(2, 6)
    expect(line.potUpliftN).toBeCloseTo(40 - 1.8, 6)
  })

  test('still water: weights below the float take up a floating rope', () => {
    const line = solved(
      plainLine({
        surfaceCurrentMps: 0,
        ropeWetWeightNpm: -0.1,
        clumps: [{ atFromFloatM: 8, wetWeightN: 5 }],
        float: lumpedFloat(40, 0.02),
      }),
    )
    // Down 8 m to the weight, up 5 m, down 17 m to the pot: nothing on the surface.
    expect(line.slackSurfaceM).toBe(0)
    expect(line.verticalN).toBeCloseTo(5 - 0.8 - 0.5, 6)
    expect(line.potUpliftN).toBeCloseTo(1.7, 6)
  })

  test('still water: a weight close under the float leaves the rest of a floating rope adrift', () => {
    const line = solved(
      plainLine({
        surfaceCurrentMps: 0,
        ropeWetWeightNpm: -0.1,
        clumps: [{ atFromFloatM: 2, wetWeightN: 5 }],
        float: lumpedFloat(40, 0.02),
      }),
    )
    // Down 2 m, back up 2 m, then 6 m up and down above the surface in truth lie on it.
    expect(line.slackSurfaceM).toBeGreaterThan(5)
    expect(Math.max(...line.shape.filter((_, i) => i % 2 === 1))).toBeLessThanOrEqual(20)
  })

  test('still water: a weight tied deeper than the water rests on the bed', () => {
    for (const ropeWetWeightNpm of [-0.1, 0, 0.1]) {
      const line = solved(
        plainLine({
          surfaceCurrentMps: 0,
          ropeWetWeightNpm,
          clumps: [{ atFromFloatM: 25, wetWeightN: 5 }],
          float: lumpedFloat(40, 0.02),
        }),
      )
      expect(line.state).toBe('surface')
      expect(line.potHorizontalN).toBe(0)
      expect(line.verticalN).toBeLessThan(5 + 3)
    }
  })

  test('a floating rope of more than the depth in a weak stream lies partly on the surface', () => {
    const line = solved(
      plainLine({
        profile: 'power',
        surfaceCurrentMps: 0.02,
        ropeWetWeightNpm: -0.1,
        float: lumpedFloat(40, 0.02),
      }),
    )
    expect(line).toMatchObject({ state: 'surface', verticalN: 0, onBottomM: 0 })
    expect(line.slackSurfaceM).toBeGreaterThan(5)
    expect(line.slackSurfaceM).toBeLessThan(10)
    expect([...line.shape.slice(0, 2)]).toEqual([line.offsetM, 20])
    expect(line.shape[3]).toBe(20)
    expect(line.shape[2]).toBeCloseTo(line.offsetM - line.slackSurfaceM, 9)
  })

  test('a sinking rope in a weak stream lies partly on the bed and does not lift the pot', () => {
    const line = solved(
      plainLine({
        surfaceCurrentMps: 0.1,
        ropeWetWeightNpm: 0.3,
        float: lumpedFloat(40, 0.02),
        potHeightM: 0.4,
      }),
    )
    expect(line.onBottomM).toBeGreaterThan(3)
    expect(Math.abs(line.potUpliftN)).toBeLessThan(1e-9)
    expect(line.potHorizontalN).toBeGreaterThan(0.1)
    const last = line.shape.length
    expect(line.shape[last - 1]).toBeCloseTo(line.shape[last - 3] ?? NaN, 12)
    expect((line.shape[last - 4] ?? NaN) - (line.shape[last - 2] ?? NaN)).toBeCloseTo(line.onBottomM, 9)
  })
})

describe('against another integrator', () => {
  test.each([
    ['plain', anyLine],
    ['weighted', anyWeightedLine],
  ] as const)('agrees to a millionth of the force over random %s lines', { timeout: 60_000 }, (_, lines) => {
    fc.assert(
      fc.property(lines, (problem) => {
        const line = solveLine(problem)
        if (line.state === 'failed' || line.onBottomM > 0 || line.slackSurfaceM > 0) return
        const end = followByOdex(problem, line)
        expect(Math.abs(end.zM - problem.potHeightM)).toBeLessThan(2e-6 * problem.ropeLengthM)
        expect(Math.abs(end.offsetM - line.offsetM)).toBeLessThan(2e-6 * problem.ropeLengthM)
        expect(Math.abs(end.pullXN - line.potHorizontalN)).toBeLessThan(1e-6 * line.tensionMaxN)
        expect(Math.abs(end.pullZN - line.potUpliftN)).toBeLessThan(1e-6 * line.tensionMaxN)
      }),
      { numRuns: 150 },
    )
  })
})

describe('balance and behaviour', () => {
  test('forces on the whole rope balance to 1e-9', () => {
    fc.assert(
      fc.property(anyLine, (problem) => {
        const line = solveLine(problem)
        if (line.state === 'failed') return
        const { dragXN, dragZN, weightN } = line.loads
        const scale = line.tensionMaxN + Math.abs(weightN) + 1e-12
        expect(Math.abs(line.floatDragN + dragXN - line.potHorizontalN)).toBeLessThan(1e-9 * scale)
        expect(Math.abs(line.verticalN + dragZN - weightN - line.potUpliftN)).toBeLessThan(1e-9 * scale)
      }),
    )
  })

  test('the drawn rope has its length, starts at the float and ends at the pot', () => {
    const problem = plainLine({ profile: 'power', potHeightM: 0.3, float: lumpedFloat(500, 0.02) })
    const line = solved(problem)
    const at = (i: number) => line.shape[i] ?? NaN
    let length = 0
    for (let i = 2; i < line.shape.length; i += 2)
      length += Math.hypot(at(i) - at(i - 2), at(i + 1) - at(i - 1))
    expect(length).toBeCloseTo(30, 1)
    expect(length).toBeLessThan(30 + 1e-9)
    expect([at(0), at(1)]).toEqual([line.offsetM, 20])
    expect(at(line.shape.length - 2)).toBeCloseTo(0, 9)
    expect(at(line.shape.length - 1)).toBeCloseTo(0.3, 4)
  })

  test('float forces run on through the moment it goes under', () => {
    const problem = plainLine({
      profile: 'power',
      float: { shape: 'sphere', diameterM: 0.2, massKg: 0.4, cd: 0.5, cdAwash: 0.3 },
    })
    const limit = pullUnderCurrent(problem)
    expect(limit).toMatchObject({ beyond: false, converged: true })
    const u = limit?.currentMps ?? NaN
    const before = solved({ ...problem, surfaceCurrentMps: u - 1e-6 })
    const after = solved({ ...problem, surfaceCurrentMps: u + 1e-6 })
    expect([before.state, after.state]).toEqual(['surface', 'under'])
    expect(before.reserveN).toBeLessThan(1e-2)
    expect(after.dipM).toBeLessThan(1e-2)
    for (const force of ['verticalN', 'potHorizontalN', 'potUpliftN'] as const)
      expect(Math.abs(after[force] - before[force])).toBeLessThan(1e-2)
  })

  test('more current asks more of the float, and a float under goes deeper', () => {
    fc.assert(
      fc.property(anyLine, (problem) => {
        const faster = { ...problem, surfaceCurrentMps: problem.surfaceCurrentMps * 1.1 }
        const [slow, fast] = [solveLine(problem), solveLine(faster)]
        if (slow.state === 'failed' || fast.state === 'failed') return
        expect(fast.verticalN).toBeGreaterThanOrEqual(slow.verticalN * (1 - 1e-6))
        expect(fast.dipM).toBeGreaterThanOrEqual(slow.dipM - 1e-4 * problem.depthM)
      }),
    )
  })

  test('a rope of the least length asks just the share it was found for', () => {
    fc.assert(
      fc.property(anyLumpedLine, fc.double({ min: 0.3, max: 0.9, noNaN: true }), (problem, share) => {
        const length = minimumRope(problem, share)
        fc.pre(length !== undefined && length < 400)
        const line = solved({ ...problem, ropeLengthM: length ?? NaN })
        const buoyancy = line.verticalN + line.reserveN
        expect(Math.abs(line.verticalN / buoyancy - share)).toBeLessThan(1e-4)
      }),
    )
  })

  test('at the pull-under current the rope takes all the buoyancy', () => {
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

  test('rough answers lie within a few thousandths of fine ones', () => {
    fc.assert(
      fc.property(anyLine, (problem) => {
        const [fine, rough] = [solveLine(problem), solveLine(problem, 'rough')]
        if (fine.state === 'failed' || rough.state === 'failed') return
        const scale = fine.tensionMaxN + 0.05
        expect(Math.abs(rough.potHorizontalN - fine.potHorizontalN)).toBeLessThan(5e-3 * scale)
        expect(Math.abs(rough.potUpliftN - fine.potUpliftN)).toBeLessThan(5e-3 * scale)
      }),
    )
  })
})

describe('lines that cannot be solved say why', () => {
  test.each([
    [{ depthM: 0 }, 'no deeper'],
    [{ depthM: 0.2, potHeightM: 0.3 }, 'no deeper'],
    [{ ropeLengthM: 0 }, 'no length'],
    [{ surfaceCurrentMps: NaN }, 'missing'],
    [{ clumps: [{ atFromFloatM: NaN, wetWeightN: 1 }] }, 'missing'],
    [{ surfaceCurrentMps: -1 }, 'below zero'],
    [{ ropeDiameterM: -1 }, 'below zero'],
    [{ float: lumpedFloat(0, 0.1) }, 'does not float'],
    [{ float: lumpedFloat(-3, 0.1) }, 'does not float'],
  ] as const)('%j', (change, words) => {
    const problem = plainLine(change)
    const line = solveLine(problem)
    expect(line).toMatchObject({ state: 'failed', converged: false, iterations: 0, residual: 0 })
    expect(line.state === 'failed' ? line.reason : '').toContain(words)
    expect(minimumRope({ ...problem, ropeLengthM: 5, depthM: 0 }, 0.5)).toBeUndefined()
  })
  test('nor is there a pull-under current or a slack for them', () => {
    expect(pullUnderCurrent(plainLine({ depthM: 0 }))).toBeUndefined()
    expect(slackAtSlackWater(plainLine({ depthM: 0 }))).toBeUndefined()
  })
})

describe('limits of current', () => {
  test('a likely answer, right or wrong, leads to the same current', () => {
    const line = plainLine()
    const plain = pullUnderCurrent(line)?.currentMps ?? NaN
    for (const near of [plain, 0.5 * plain, 2 * plain, 0, 99])
      expect(pullUnderCurrent(line, 1, { near })?.currentMps).toBeCloseTo(plain, 6)
    expect(pullUnderCurrent(line, 1, { near: plain, tolerance: 0.02 })?.currentMps).toBeCloseTo(plain, 1)
    // Half the buoyancy is used up at the current divided by √2: all loads grow with its square.
    expect(pullUnderCurrent(line, 0.5)?.currentMps).toBeCloseTo(plain / Math.SQRT2, 5)
  })

  test('a rope shorter than the depth draws the float under at once', () => {
    expect(pullUnderCurrent(plainLine({ ropeLengthM: 15 }))).toEqual({
      currentMps: 0,
      beyond: false,
      converged: true,
    })
  })
  test('a large float on a thin rope is not drawn under', () => {
    expect(pullUnderCurrent(plainLine({ ropeDiameterM: 0.0001, float: lumpedFloat(1e5, 0.01) }))).toEqual({
      currentMps: 8,
      beyond: true,
      converged: true,
    })
  })
  test('no length of heavy rope serves a small float', () => {
    const heavy = plainLine({ ropeWetWeightNpm: 5, float: lumpedFloat(20, 0.01) })
    expect(minimumRope(heavy, 0.5)).toBeUndefined()
  })
})
