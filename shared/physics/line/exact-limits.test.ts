import { describe, expect, test } from 'vitest'
import { dragCatenary, straightLine } from '@shared/physics/rope/exact-shapes'
import { lumpedFloat, plainLine, solved } from './line-samples'
import { slackAtSlackWater } from './slack-water'

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
    expect(line.tensionMaxN).toBeCloseTo(2, 9)
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
    expect(line).toMatchObject({ state: 'under', reserveN: 0, verticalN: 40 })
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
    // The rope pulls hardest just above the weight.
    expect(line.tensionMaxN).toBeCloseTo(5 - 0.5, 6)
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
    const with25 = (ropeWetWeightNpm: number) =>
      solved(
        plainLine({
          surfaceCurrentMps: 0,
          ropeWetWeightNpm,
          clumps: [{ atFromFloatM: 25, wetWeightN: 5 }],
          float: lumpedFloat(40, 0.02),
        }),
      )
    // A sinking rope hangs 20 m to the bed and carries nothing of the weight.
    const sinking = with25(0.1)
    expect(sinking.verticalN).toBeCloseTo(2, 9)
    expect(sinking.onBottomM).toBeCloseTo(10, 9)
    // A floating one stands up from the weight, and 5 m of it lie on the surface.
    const floating = with25(-0.1)
    expect(floating.slackSurfaceM).toBeCloseTo(5, 9)
    expect(floating.onBottomM).toBeCloseTo(5, 9)
    expect(floating.tensionMaxN).toBeCloseTo(2, 9)
    for (const line of [sinking, floating, with25(0)])
      expect(line).toMatchObject({ state: 'surface', potHorizontalN: 0, dipM: 0 })
    expect(with25(0).verticalN).toBeCloseTo(0, 6)
  })

  test('in a stream the rope beyond a weight at rest pulls no upwards on the pot', () => {
    for (const [surfaceCurrentMps, ropeWetWeightNpm] of [
      [0.1, -0.1],
      [0.1, 0],
      [0.1, 0.1],
      [0.3, 0.1],
    ] as const) {
      const line = solved(
        plainLine({
          surfaceCurrentMps,
          ropeWetWeightNpm,
          clumps: [{ atFromFloatM: 25, wetWeightN: 5 }],
          float: lumpedFloat(40, 0.02),
        }),
      )
      // 5 m from the weight to the pot.
      expect(line.onBottomM).toBeCloseTo(5, 9)
      expect(Math.abs(line.potUpliftN)).toBeLessThan(1e-9)
      expect(line.potHorizontalN).toBeGreaterThan(line.floatDragN)
    }
  })

  test('in a stronger stream the same weight hangs, and the pot is pulled upwards', () => {
    const line = solved(
      plainLine({
        surfaceCurrentMps: 0.5,
        clumps: [{ atFromFloatM: 25, wetWeightN: 5 }],
        float: lumpedFloat(40, 0.02),
      }),
    )
    expect(line.onBottomM).toBe(0)
    expect(line.loads.weightN).toBe(5)
    expect(line.potUpliftN).toBeGreaterThan(1)
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
