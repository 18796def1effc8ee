import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { solveLine, type LineProblem } from './line'
import { followByOdex } from './line-by-odex'
import { anyLine, anySlackLine, anyWeightedLine, lumpedFloat, plainLine, solved } from './line-samples'
import { pullUnderCurrent } from './pull-under'
import { slackAtSlackWater } from './slack-water'

describe('against another integrator', () => {
  test.each([
    ['plain', anyLine],
    ['weighted', anyWeightedLine],
    ['slack', anySlackLine],
  ] as const)('agrees to a millionth of the force over random %s lines', (kind, lines) => {
    fc.assert(
      fc.property(lines, (problem) => {
        const line = solveLine(problem)
        const lies = line.state !== 'failed' && line.onBottomM + line.slackSurfaceM > 0
        // A weight may lie on the bed or hang in rope that reaches the surface again.
        if (line.state === 'failed' || (kind === 'weighted' && lies)) return
        const end = followByOdex(problem, line)
        expect(Math.abs(end.zM - problem.potHeightM)).toBeLessThan(2e-6 * problem.ropeLengthM)
        expect(Math.abs(end.offsetM - line.offsetM)).toBeLessThan(2e-6 * problem.ropeLengthM)
        expect(Math.abs(end.pullXN - line.potHorizontalN)).toBeLessThan(1e-6 * line.tensionMaxN)
        expect(Math.abs(end.pullZN - line.potUpliftN)).toBeLessThan(1e-6 * line.tensionMaxN)
        // No rope pulls harder at an end than anywhere.
        expect(Math.hypot(end.pullXN, end.pullZN)).toBeLessThan(line.tensionMaxN * (1 + 1e-6))
      }),
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
        expect(line.iterations).toBeGreaterThan(0)
        expect(line.iterations).toBeLessThan(161)
        expect(line.residual).toBeLessThan(1e-5)
      }),
    )
  })

  test('the float is dragged by what shows of it, rope on the surface by its skin', () => {
    const line = solved(
      plainLine({ surfaceCurrentMps: 0.02, ropeWetWeightNpm: -0.1, float: lumpedFloat(40, 0.02) }),
    )
    const pressure = 0.5 * 1025 * 0.02 ** 2
    expect(line.floatDragN).toBeCloseTo(pressure * 0.02, 12)
    const skin = pressure * 0.02 * 0.008 * line.slackSurfaceM
    expect(line.loads.dragXN).toBeGreaterThan(skin)
    expect(line.floatDragN + line.loads.dragXN).toBeCloseTo(line.potHorizontalN, 12)
  })

  test('weights and currents as good as none change nothing', () => {
    const same = (change: Partial<LineProblem>, base: Partial<LineProblem> = {}) =>
      expect(solved(plainLine({ ...base, ...change }))).toEqual(solved(plainLine(base)))
    same({ ropeWetWeightNpm: 1e-12 })
    same({ ropeWetWeightNpm: -1e-12 })
    same({ clumps: [{ atFromFloatM: 10, wetWeightN: 1e-12 }] })
    same({ clumps: [{ atFromFloatM: 31, wetWeightN: 5 }] })
    const pull = (surfaceCurrentMps: number) =>
      solved(plainLine({ surfaceCurrentMps, ropeWetWeightNpm: 0.1 })).potHorizontalN
    expect(pull(1e-6)).toBe(0)
    expect(pull(0.01)).toBeGreaterThan(0.5 * 1025 * 0.02 * 0.01 ** 2)
  })

  test('weights may be named in any order', () => {
    const clumps = [
      { atFromFloatM: 4, wetWeightN: 2 },
      { atFromFloatM: 12, wetWeightN: 1 },
      { atFromFloatM: 20, wetWeightN: 3 },
    ]
    const inOrder = solved(plainLine({ clumps }))
    expect(solved(plainLine({ clumps: [...clumps].reverse() }))).toEqual(inOrder)
    expect(inOrder.loads.weightN).toBe(6)
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
    expect(line.shape.length).toBeGreaterThanOrEqual(2 * 25)
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

  test('a score of tries is enough for a line of the trade', () => {
    fc.assert(
      fc.property(anyLine, (problem) => {
        expect(solveLine(problem).iterations).toBeLessThan(20)
        expect(solveLine(problem, 'rough').iterations).toBeLessThan(16)
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
        expect(rough.shape).toHaveLength(0)
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
  })
  test('nor is there a balance to be found for 850 m of stout floating rope in 41 m of racing water', () => {
    const line = solveLine(
      plainLine({
        profile: 'power',
        surfaceCurrentMps: 3.6,
        depthM: 41,
        ropeLengthM: 850,
        ropeDiameterM: 0.06,
        ropeWetWeightNpm: -1,
        clumps: [{ atFromFloatM: 150, wetWeightN: 30 }],
        float: { shape: 'sphere', diameterM: 1.6, massKg: 0.15, cd: 1.1, cdAwash: 1 },
        cdn: 0.75,
        cdt: 0.2,
      }),
    )
    expect(line).toMatchObject({ state: 'failed', converged: false })
    expect(line.state === 'failed' ? line.reason : '').toContain('No balance')
    expect(line.residual).toBeGreaterThan(1e-5)
    expect(line.iterations).toBeGreaterThan(0)
    expect(line.iterations).toBeLessThan(161)
  })
  test('nor is there a slack for them', () => {
    expect(slackAtSlackWater(plainLine({ depthM: 0 }))).toBeUndefined()
  })
})
