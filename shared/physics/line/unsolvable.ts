import { netBuoyancy } from '@shared/physics/float/float'
import type { LineProblem } from './problem'

/** A rope that rises less than this is not solved for [m]. */
const leastRiseM = 1e-3

/** Why a line has no balance to be found, as a sentence for a person; `undefined` when it can be solved. */
export function unsolvable(problem: LineProblem): string | undefined {
  const numbers = [
    problem.surfaceCurrentMps,
    problem.depthM,
    problem.ropeLengthM,
    problem.ropeDiameterM,
    problem.ropeWetWeightNpm,
    problem.cdn,
    problem.cdt,
    problem.waterDensity,
    problem.potHeightM,
    netBuoyancy(problem.float, problem.waterDensity),
    ...problem.clumps.flatMap((clump) => [clump.atFromFloatM, clump.wetWeightN]),
  ]
  if (!numbers.every(Number.isFinite)) return 'A figure of the rope, the float or the water is missing.'
  if (!(problem.ropeLengthM > 0)) return 'The rope has no length.'
  if (problem.surfaceCurrentMps < 0 || problem.ropeDiameterM < 0) return 'A size or a speed is below zero.'
  if (!(problem.depthM > problem.potHeightM + leastRiseM))
    return 'The water is no deeper than the pot is high, so the rope does not hang.'
  if (!(netBuoyancy(problem.float, problem.waterDensity) > 0)) return 'The float does not float by itself.'
  return undefined
}
