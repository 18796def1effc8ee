import { Solver } from 'odex'
import { speedAt } from '@shared/physics/current/speed'
import type { LineProblem, LineSolution } from './problem'

/** The lower end of a rope followed from the top forces of a solution by another integrator, for tests. */
export interface LowerEnd {
  readonly pullXN: number
  readonly pullZN: number
  readonly offsetM: number
  readonly zM: number
}

/**
 * Hairer's extrapolation code on the plain equations dT/ds = f, dr/ds = -T/|T|, written apart from the solver. Rope on
 * the surface streams along it, rope on the bed lies still. Weights in order.
 */
export function followByOdex(problem: LineProblem, top: LineSolution): LowerEnd {
  const solver = new Solver(4)
  solver.absoluteTolerance = solver.relativeTolerance = 1e-11
  solver.maxSteps = 100_000
  const pressure = (cd: number) => 0.5 * problem.waterDensity * cd * problem.ropeDiameterM
  const slope = (_: number, [tx = 0, tz = 0, , z = 0]: number[]): number[] => {
    const tension = Math.hypot(tx, tz)
    const [ex, ez] = [tx / tension, tz / tension]
    const u = speedAt(problem, z)
    const along = u * ex
    const [nx, nz] = [u - along * ex, -along * ez]
    const across = pressure(problem.cdn) * Math.hypot(nx, nz)
    const skin = pressure(problem.cdt) * Math.abs(along) * along
    return [across * nx + skin * ex, across * nz + skin * ez - problem.ropeWetWeightNpm, -ex, -ez]
  }
  let from = top.slackSurfaceM
  const trailing = pressure(problem.cdt) * problem.surfaceCurrentMps ** 2 * from
  let state = [top.floatDragN + trailing, top.verticalN, -from, problem.depthM - top.dipM]
  for (const { atFromFloatM, wetWeightN } of problem.clumps) {
    state = solver.solve(slope, from, state, atFromFloatM).y
    state = state.map((value, i) => (i === 1 ? value - wetWeightN : value))
    from = atFromFloatM
  }
  const [pullXN = NaN, pullZN = NaN, x = NaN, zM = NaN] = solver.solve(
    slope,
    from,
    state,
    problem.ropeLengthM - top.onBottomM,
  ).y
  return { pullXN, pullZN, offsetM: top.onBottomM - x, zM }
}
