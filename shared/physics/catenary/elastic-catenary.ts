import { bracketUpwards } from '@shared/numerics/bracket'
import { brentRoot } from '@shared/numerics/brent-root'

/** A heavy elastic line between a fairlead and a point on the bed, in still water. */
export interface CatenaryProblem {
  /** Horizontal and vertical distance between the ends [m]. */
  readonly spanM: number
  readonly riseM: number
  readonly lengthM: number
  /** Stiffness E·A [N]. */
  readonly stiffnessN: number
  /** Weight in water per metre [N/m], > 0. */
  readonly wetWeightNpm: number
  /** Whether the lower end lies on a bed that carries the line; without one it may hang below its end. */
  readonly onBed: boolean
}

export interface Catenary {
  readonly horizontalN: number
  /** Vertical pull at the upper end. */
  readonly verticalTopN: number
  readonly groundedM: number
  readonly converged: boolean
}

/**
 * Tension of an elastic line hanging in still water, part of which may lie on a frictionless bed.
 *
 * Free: x = (H/w)(asinh(V/H) - asinh((V - wL)/H)) + HL/EA, z = (H/w)(√(1 + (V/H)²) - √(1 + ((V - wL)/H)²)) + (VL -
 * wL²/2)/EA. On the bed (V < wL): x = L_B + (H/w) asinh(V/H) + HL/EA, z = (H/w)(√(1 + (V/H)²) - 1) + V²/2EAw.
 * For each H the rise gives V, and the span then gives H; both grow steadily, so each is a bracketed root.
 *
 * @param problem line with all lengths, weight and stiffness positive
 * @returns end forces and the length on the bed
 * @throws {RangeError} a length, weight or stiffness not positive
 * @source elastic catenary; Jonkman 2007, NREL/TP-500-41958 (from memory); checked with the tests of MoorPy (NREL)
 */
export function elasticCatenary(problem: CatenaryProblem): Catenary {
  const { spanM, riseM, lengthM, wetWeightNpm } = problem
  if (!(spanM > 0 && riseM > 0 && lengthM > 0 && wetWeightNpm > 0 && problem.stiffnessN > 0))
    throw new RangeError('elasticCatenary: lengths, weight and stiffness must be positive')
  const weight = wetWeightNpm * lengthM
  const misfit = (logH: number) => {
    const horizontalN = weight * Math.exp(logH)
    const { verticalN } = verticalAt(problem, horizontalN)
    return spanOf(problem, horizontalN, verticalN) - spanM
  }
  const found = brentRoot(misfit, Math.log(1e-9), Math.log(1e9), { tolerance: 1e-13, maxEvaluations: 200 })
  const horizontalN = weight * Math.exp(found.root)
  const { verticalN, converged } = verticalAt(problem, horizontalN)
  return {
    horizontalN,
    verticalTopN: verticalN,
    groundedM: problem.onBed ? Math.max(0, lengthM - verticalN / wetWeightNpm) : 0,
    converged: found.converged && converged,
  }
}

function verticalAt(
  problem: CatenaryProblem,
  horizontalN: number,
): { verticalN: number; converged: boolean } {
  const misfit = (v: number) => riseOf(problem, horizontalN, v) - problem.riseM
  const bracket = bracketUpwards(misfit, 0, problem.wetWeightNpm * problem.lengthM, 1e300)
  if (!bracket) return { verticalN: 0, converged: false }
  const found = brentRoot(misfit, bracket.from, bracket.to, { endValues: bracket.endValues })
  return { verticalN: found.root, converged: found.converged }
}

function spanOf({ lengthM, wetWeightNpm, stiffnessN, onBed }: CatenaryProblem, h: number, v: number): number {
  const low = v - wetWeightNpm * lengthM
  const stretch = (h * lengthM) / stiffnessN
  if (!onBed || low >= 0) return (h / wetWeightNpm) * (Math.asinh(v / h) - Math.asinh(low / h)) + stretch
  return lengthM - v / wetWeightNpm + (h / wetWeightNpm) * Math.asinh(v / h) + stretch
}

function riseOf({ lengthM, wetWeightNpm, stiffnessN, onBed }: CatenaryProblem, h: number, v: number): number {
  const low = v - wetWeightNpm * lengthM
  const top = Math.hypot(1, v / h)
  if (!onBed || low >= 0)
    return (
      (h / wetWeightNpm) * (top - Math.hypot(1, low / h)) +
      (v * lengthM - (wetWeightNpm * lengthM ** 2) / 2) / stiffnessN
    )
  return (h / wetWeightNpm) * (top - 1) + v ** 2 / (2 * stiffnessN * wetWeightNpm)
}
