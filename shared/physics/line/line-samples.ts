import fc from 'fast-check'
import { between } from '@shared/numerics/even-samples'
import { netBuoyancy, sunkDragArea } from '@shared/physics/float/float'
import type { FloatBody } from '@shared/physics/float/float-body'
import { solveLine } from './line'
import type { LineProblem, LineSolution } from './problem'

/* Lines for tests: one plain one, and any line met in the trade. */

export const lumpedFloat = (netBuoyancyN: number, dragAreaM2: number): FloatBody => ({
  shape: 'lumped',
  netBuoyancyN,
  dragAreaM2,
})

/** 30 m of 8 mm neutral rope in 20 m of water running at 0.8 m/s all the way down. */
export const plainLine = (change: Partial<LineProblem> = {}): LineProblem => ({
  profile: 'uniform',
  surfaceCurrentMps: 0.8,
  depthM: 20,
  ropeLengthM: 30,
  ropeDiameterM: 0.008,
  ropeWetWeightNpm: 0,
  clumps: [],
  float: lumpedFloat(500, 0.02),
  cdn: 1.2,
  cdt: 0.02,
  waterDensity: 1025,
  potHeightM: 0,
  ...change,
})

const anyFloat: fc.Arbitrary<FloatBody> = fc
  .tuple(
    fc.constantFrom('sphere', 'cylinder', 'bullet'),
    between(0.12, 0.4),
    between(1.2, 3),
    between(0, 0.5),
  )
  .map(([shape, diameterM, slender, cdAwash]) => {
    const massKg = 40 * diameterM ** 3
    return shape === 'sphere'
      ? { shape, diameterM, massKg, cd: 0.5, cdAwash }
      : { shape, diameterM, lengthM: diameterM * slender, massKg, cd: 0.8, cdAwash }
  })

export const anyLine: fc.Arbitrary<LineProblem> = fc
  .record({
    profile: fc.constantFrom('uniform', 'power', 'log'),
    z0M: fc.constantFrom(0.0002, 0.003),
    surfaceCurrentMps: between(0.05, 2.5),
    depthM: between(2, 40),
    scope: between(1.02, 3),
    ropeDiameterM: between(0.004, 0.014),
    ropeWetWeightNpm: fc.oneof(between(-0.15, 0.5), fc.constant(0)),
    float: anyFloat,
    cdn: between(1, 2),
    cdt: between(0.01, 0.1),
    potHeightM: between(0.05, 0.6),
  })
  .map(({ scope, ...line }) => ({
    ...line,
    ropeLengthM: scope * line.depthM,
    clumps: [],
    waterDensity: 1025,
  }))

/** The same with floats of one drag area: close to going under, a round float can have two balances. */
export const anyLumpedLine = anyLine.map((line): LineProblem => ({
  ...line,
  float: lumpedFloat(netBuoyancy(line.float, line.waterDensity), sunkDragArea(line.float)),
}))

/** The same in so weak a stream that part of the rope often lies on the surface or on the bed. */
export const anySlackLine = fc
  .tuple(anyLine, between(0.1, 0.5), between(-0.3, 0.5))
  .map(([line, share, ropeWetWeightNpm]): LineProblem => ({
    ...line,
    ropeWetWeightNpm,
    surfaceCurrentMps: share * line.surfaceCurrentMps,
  }))

/** The same with two weights tied in, in order from the float. */
export const anyWeightedLine = fc
  .tuple(anyLine, between(0.05, 0.5), between(0.55, 0.95), between(0.1, 3), between(0.1, 3))
  .map(([line, first, second, one, two]): LineProblem => ({
    ...line,
    clumps: [
      { atFromFloatM: first * line.ropeLengthM, wetWeightN: one },
      { atFromFloatM: second * line.ropeLengthM, wetWeightN: two },
    ],
  }))

/** A line that has a balance. */
export function solved(problem: LineProblem): LineSolution {
  const result = solveLine(problem)
  if (result.state === 'failed') throw new Error(result.reason)
  return result
}
