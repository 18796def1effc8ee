import fc from 'fast-check'
import { bench, describe } from 'vitest'
import { completePot } from '../fixtures/arbitrary-pot'
import { potGeometry } from '@shared/design/geometry/build'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import type { Pot } from '@shared/schema/pot'
import { singleChanges } from '@shared/verdicts/best-change'
import { checkPot, type CheckInput } from '@shared/verdicts/check-pot'

const [, standard] = starterPots
if (!standard) throw new Error('no starting shapes')

const input: CheckInput = {
  pot: standard,
  materials: builtInMaterials,
  coefficients: defaultCoefficients,
  conditions: {
    surfaceCurrentMps: 0.8,
    depthLowM: 8,
    depthHighM: 11,
    bottom: 'sand',
    waves: undefined,
    temperatureC: 10,
    salinityPsu: 30,
    basis: 'a current typed in',
  },
}

const fine: Pot = {
  ...standard,
  netting: { material: 'PE', twineDiameterMm: 1.5, barLengthMm: 25, knotted: true },
}

describe('one change on the Bench', () => {
  bench('full check, three coefficient sets (goal: under 4 ms)', () => {
    checkPot(input)
  })
  bench('geometry, 25 mm mesh on a 900 mm pot (goal: under 8 ms)', () => {
    potGeometry(fine)
  })
  bench('which single change would help', () => {
    singleChanges(input)
  })
})

describe('any design', () => {
  const pots = fc.sample(completePot, { numRuns: 10_000, seed: 1 })
  bench(
    '10,000 random checks',
    () => {
      for (const pot of pots) checkPot({ ...input, pot })
    },
    { iterations: 1, warmupIterations: 0, warmupTime: 0, time: 0 },
  )
})
