import { coefficientSet, defaultCoefficients } from '@shared/physics/coefficients'
import { plainLine } from '@shared/physics/line/line-samples'
import type { FlowBody } from './flow-body'
import type { PotFlow } from './pot-drag'
import type { StandingPot } from './standing-pot'

/* A pot for tests, and the water it stands in. */

export const middle = coefficientSet(defaultCoefficients, 'middle')

export const still: PotFlow = {
  current: { profile: 'uniform', surfaceCurrentMps: 1, depthM: 20 },
  waterDensity: 1000,
  coefficients: middle,
}
export const panel: FlowBody = {
  part: 'netting',
  kind: 'netting',
  areaM2: 0.2,
  solidity: 0.2,
  shadowed: 0,
  centreHeightM: 0.15,
  topHeightM: 0.3,
  volumeM3: 0.0004,
}
export const bar: FlowBody = {
  ...panel,
  part: 'base-ring',
  kind: 'bar',
  areaM2: 0.02,
  centreHeightM: 0.01,
  topHeightM: 0.02,
}

/** Two panels and a ring, with no rope on them. */
export const lonePot: StandingPot = {
  bodies: [panel, { ...panel, shadowed: 1 }, bar],
  wetWeightN: 60,
  edgeArmM: 0.42,
  upliftArmM: 0.42,
  bridleHeightM: 0.3,
  bottom: 'sand',
  current: { profile: 'power', surfaceCurrentMps: 0.6, depthM: 12 },
  waterDensity: 1025,
  coefficients: middle,
}

/** The same on 18 m of rope in 12 m of water. */
export const ropedPot: StandingPot = {
  ...lonePot,
  line: plainLine({
    depthM: 12,
    ropeLengthM: 18,
    potHeightM: 0.3,
    ropeWetWeightNpm: -0.04,
    float: { shape: 'sphere', diameterM: 0.25, massKg: 0.6, cd: 0.5, cdAwash: 0.2 },
  }),
}
