import { bench, describe } from 'vitest'
import { coefficientSet, defaultCoefficients, outlooks } from '@shared/physics/coefficients'
import { criticalCurrents } from '@shared/physics/holding/critical-current'
import type { FlowBody } from '@shared/physics/holding/flow-body'
import { potDrag } from '@shared/physics/holding/pot-drag'
import { standing, type StandingPot } from '@shared/physics/holding/standing-pot'
import { solveLine, type LineProblem } from '@shared/physics/line/line'
import { minimumRope } from '@shared/physics/line/minimum-rope'
import { pullUnderCurrent } from '@shared/physics/line/pull-under'

/* What the computation costs, piece by piece. Aims: one line under 0.15 ms, a pot with three coefficient sets 4 ms. */

const middle = coefficientSet(defaultCoefficients, 'middle')
const current = { profile: 'power', surfaceCurrentMps: 0.8, depthM: 12 } as const

const line: LineProblem = {
  ...current,
  ropeLengthM: 18,
  ropeDiameterM: 0.008,
  ropeWetWeightNpm: -0.035,
  clumps: [],
  float: { shape: 'sphere', diameterM: 0.25, massKg: 0.6, cd: 0.5, cdAwash: 0.2 },
  cdn: 1.2,
  cdt: 0.02,
  waterDensity: 1025,
  potHeightM: 0.3,
}

/** Sixteen panels round a pot, half of them behind the others, with rings and bait. */
const bodies: FlowBody[] = Array.from({ length: 16 }, (_, i) => ({
  part: 'netting' as const,
  kind: 'netting' as const,
  areaM2: 0.05,
  solidity: 0.15,
  alphaDeg: (i % 8) * 11.25,
  shadowed: i < 8 ? 0 : 1,
  centreHeightM: 0.15,
  topHeightM: 0.3,
  volumeM3: 0.00005,
}))
for (const [heightM, areaM2] of [
  [0.01, 0.018],
  [0.3, 0.015],
] as const)
  bodies.push({
    part: 'base-ring',
    kind: 'bar',
    areaM2,
    shadowed: 0,
    centreHeightM: heightM - 0.005,
    topHeightM: heightM,
    volumeM3: 0.0002,
  })

const pot: StandingPot = {
  bodies,
  wetWeightN: 55,
  edgeArmM: 0.42,
  upliftArmM: 0.42,
  bridleHeightM: 0.3,
  bottom: 'sand',
  current,
  waterDensity: 1025,
  coefficients: middle,
  line,
}

const lines = Array.from({ length: 10_000 }, (_, i) => ({
  ...line,
  surfaceCurrentMps: 0.1 + (i % 100) * 0.02,
  ropeLengthM: 13 + (i % 37),
  ropeDiameterM: 0.006 + (i % 7) * 0.001,
  ropeWetWeightNpm: -0.1 + (i % 31) * 0.01,
}))

describe('line', () => {
  bench('one line to a millionth of the force', () => {
    solveLine(line)
  })
  bench('one line drawn under', () => {
    solveLine({ ...line, surfaceCurrentMps: 2 })
  })
  bench('one line, rough', () => {
    solveLine(line, 'rough')
  })
  bench('pull-under current', () => {
    pullUnderCurrent(line)
  })
  bench('least rope', () => {
    minimumRope(line, 0.5)
  })
})

describe('pot', () => {
  bench('drag of 18 bodies', () => {
    potDrag(bodies, { current, waterDensity: 1025, coefficients: middle })
  })
  bench('three coefficient sets: forces, critical currents, pull-under and least rope', () => {
    for (const outlook of outlooks) {
      const any = { ...pot, coefficients: coefficientSet(defaultCoefficients, outlook) }
      standing(any)
      criticalCurrents(any)
      pullUnderCurrent(line)
      minimumRope(line, 0.5)
    }
  })
})

describe('many', () => {
  bench(
    '10,000 different lines',
    () => {
      for (const any of lines) solveLine(any)
    },
    { iterations: 2, time: 0, warmupIterations: 1, warmupTime: 0 },
  )
})
