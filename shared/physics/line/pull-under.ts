import { bracketUpwards, type Bracket } from '@shared/numerics/bracket'
import { brentRoot } from '@shared/numerics/brent-root'
import { LineBalance } from './balance'
import type { LineProblem } from './problem'
import { unsolvable } from './unsolvable'

/** Currents are not searched beyond this [m/s]. */
export const strongestCurrentMps = 8

/** The current at which something gives way. */
export interface CurrentLimit {
  /** Surface speed [m/s]; where `beyond`, the strongest speed searched. */
  readonly currentMps: number
  /** It does not give way up to `currentMps`. */
  readonly beyond: boolean
  readonly converged: boolean
}

/** How a limit is looked for. */
export interface LimitSearch {
  /** A likely answer, tried first [m/s]. */
  readonly near?: number
  /** Width of current the answer is found to [m/s]. */
  readonly tolerance?: number
}

/**
 * Surface current at which the float is just drawn under, or at which it gives a share of its buoyancy.
 *
 * A round float close to going under shows less of its side as it rises, so it may have a second balance there with a
 * little to spare; the current given is the lower, at which it can be held under.
 *
 * The root in the speed of "the rope asks for V = share · B at the surface": one rope followed for each speed.
 *
 * @param problem line; its own surface current is not used
 * @param share   share of the net buoyancy taken as used up [-], above 0 to 1
 * @param search  where the answer is likely, and how closely it is wanted
 * @returns the current; 0 when even still water asks for more; `undefined` for a line that cannot be solved
 * @source balance of rope and float (see `solveLine`)
 */
export function pullUnderCurrent(
  problem: LineProblem,
  share = 1,
  search: LimitSearch = {},
): CurrentLimit | undefined {
  if (unsolvable({ ...problem, surfaceCurrentMps: 0 }) !== undefined) return undefined
  const excess = (currentMps: number) => {
    const balance = new LineBalance({ ...problem, surfaceCurrentMps: currentMps })
    return balance.missAt(share * balance.buoyancyN)
  }
  // In still water a light rope hangs slack under any float, however the miss comes out there.
  if (excess(0) > 0) return { currentMps: 0, beyond: false, converged: true }
  const bracket = bracketNear(excess, search.near) ?? bracketUpwards(excess, 0, 0.25, strongestCurrentMps)
  if (!bracket) return { currentMps: strongestCurrentMps, beyond: true, converged: true }
  const { from, to, endValues } = bracket
  const found = brentRoot(excess, from, to, { endValues, tolerance: search.tolerance ?? 1e-7 })
  return { currentMps: found.root, beyond: false, converged: found.converged }
}

/** A narrow bracket round a likely answer, where it holds one. */
function bracketNear(excess: (currentMps: number) => number, near = 0): Bracket | undefined {
  if (!(near > 0 && near < strongestCurrentMps)) return undefined
  return bracketUpwards(excess, 0.96 * near, 1.04 * near, 1.04 * near)
}
