/** A root found, or the best there is, with what is left of the function there. */
export interface Root {
  readonly root: number
  /** Value of the function at `root`. */
  readonly residual: number
  /** Number of times the function was evaluated. */
  readonly evaluations: number
  /** Whether the interval around the root shrank to the tolerance, or the function vanished. */
  readonly converged: boolean
}

export interface RootOptions {
  /** Absolute tolerance on the root. */
  readonly tolerance?: number
  /** A function value this small counts as zero. */
  readonly residualTolerance?: number
  readonly maxEvaluations?: number
  /** Function values at the two ends, where they are already known. */
  readonly endValues?: readonly [number, number]
}

/**
 * Root of a continuous function between two points where its sign differs.
 *
 * Brent's method: inverse quadratic interpolation or the secant where they help, bisection where they do not, so
 * the interval always shrinks. Ends of the same sign, or a value that is not a number, give `converged: false`.
 *
 * @param f       function of one variable
 * @param from    one end of the interval
 * @param to      other end
 * @param options tolerances (1e-12 of the interval's size by default) and the limit of evaluations (100)
 * @returns the root, the residual and whether it converged; never throws and never runs past the limit
 * @source R. P. Brent, Algorithms for Minimization without Derivatives, 1973, ch. 4 (`zero`)
 */
export function brentRoot(
  f: (x: number) => number,
  from: number,
  to: number,
  options: RootOptions = {},
): Root {
  const { residualTolerance = 0, maxEvaluations = 100, endValues } = options
  const tolerance = options.tolerance ?? 1e-12 * Math.max(Math.abs(from), Math.abs(to))
  let a = from
  let b = to
  let fa = endValues ? endValues[0] : f(a)
  let fb = endValues ? endValues[1] : f(b)
  let evaluations = endValues ? 0 : 2
  if (Math.abs(fa) <= residualTolerance) return { root: a, residual: fa, evaluations, converged: true }
  if (Math.abs(fb) <= residualTolerance) return { root: b, residual: fb, evaluations, converged: true }
  if (!(fa < 0 !== fb < 0) || !Number.isFinite(fa + fb))
    return { root: b, residual: fb, evaluations, converged: false }
  let c = a
  let fc = fa
  let step = b - a
  let lastStep = step
  for (;;) {
    if (fb < 0 === fc < 0) {
      c = a
      fc = fa
      step = lastStep = b - a
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      a = b
      b = c
      c = a
      fa = fb
      fb = fc
      fc = fa
    }
    const least = 2 * Number.EPSILON * Math.abs(b) + tolerance / 2
    const half = (c - b) / 2
    if (Math.abs(half) <= least || Math.abs(fb) <= residualTolerance)
      return { root: b, residual: fb, evaluations, converged: true }
    if (evaluations >= maxEvaluations) return { root: b, residual: fb, evaluations, converged: false }
    if (Math.abs(lastStep) >= least && Math.abs(fa) > Math.abs(fb)) {
      let p: number
      let q: number
      const s = fb / fa
      if (a === c) {
        p = 2 * half * s
        q = 1 - s
      } else {
        const r = fa / fc
        const t = fb / fc
        p = s * (2 * half * r * (r - t) - (b - a) * (t - 1))
        q = (r - 1) * (t - 1) * (s - 1)
      }
      if (p > 0) q = -q
      else p = -p
      if (2 * p < Math.min(3 * half * q - Math.abs(least * q), Math.abs(lastStep * q))) {
        lastStep = step
        step = p / q
      } else step = lastStep = half
    } else step = lastStep = half
    a = b
    fa = fb
    b += Math.abs(step) > least ? step : Math.sign(half) * least
    fb = f(b)
    evaluations += 1
    if (!Number.isFinite(fb)) return { root: a, residual: fa, evaluations, converged: false }
  }
}
