/** The part of the integrator that tests use; the package ships a source that does not pass strict checks. */
export class Solver {
  constructor(components: number)
  absoluteTolerance: number
  relativeTolerance: number
  maxSteps: number
  solve(
    slope: (x: number, y: number[]) => number[],
    from: number,
    start: number[],
    to: number,
  ): { y: number[]; outcome: number }
}
