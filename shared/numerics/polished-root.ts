import type { Root } from './brent-root'

/**
 * A root close to a known place, by the secant.
 *
 * Meant for a function whose root has been found on a cheaper version of it. The root returned is the last place at
 * which the function was asked, so what it left behind there can be used.
 *
 * @param f    function of one variable
 * @param near where the root is expected
 * @param from one end of the interval the root must lie in
 * @param to   other end
 * @returns the root, to 1e-9 of the interval; `undefined` when it does not settle within nine evaluations
 * @source secant method
 */
export function polishedRoot(
  f: (q: number) => number,
  near: number,
  from: number,
  to: number,
): Root | undefined {
  const whole = to - from
  const inside = (q: number) => Math.min(to, Math.max(from, q))
  let before = near
  let missBefore = f(before)
  let q = inside(before + (before > from + whole / 2 ? -1e-4 : 1e-4) * whole)
  for (let evaluations = 2; evaluations < 9; evaluations += 1) {
    const miss = f(q)
    const next = inside(q - (miss * (q - before)) / (miss - missBefore))
    if (!Number.isFinite(next)) return undefined
    if (Math.abs(next - q) <= 1e-9 * whole) return { root: q, residual: miss, evaluations, converged: true }
    before = q
    missBefore = miss
    q = next
  }
  return undefined
}
