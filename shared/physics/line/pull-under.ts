import { bracketUpwards } from '@shared/numerics/bracket'
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

/**
 * Surface current at which the float is just drawn under, or at which it gives a share of its buoyancy.
 *
 * The root in the speed of "the rope asks for V = share · B at the surface": one rope followed for each speed.
 *
 * @param problem line; its own surface current is not used
 * @param share   share of the net buoyancy taken as used up [-], above 0 to 1
 * @returns the current; 0 when even still water asks for more; `undefined` for a line that cannot be solved
 * @source balance of rope and float (see `solveLine`)
 */
export function pullUnderCurrent(problem: LineProblem, share = 1): CurrentLimit | undefined {
  if (unsolvable({ ...problem, surfaceCurrentMps: 0 }) !== undefined) return undefined
  const excess = (currentMps: number) => {
    const balance = new LineBalance({ ...problem, surfaceCurrentMps: currentMps })
    return balance.missAt(share * balance.buoyancyN)
  }
  // In still water a light rope hangs slack under any float, however the miss comes out there.
  if (excess(0) > 0) return { currentMps: 0, beyond: false, converged: true }
  const bracket = bracketUpwards(excess, 0, 0.25, strongestCurrentMps)
  if (!bracket) return { currentMps: strongestCurrentMps, beyond: true, converged: true }
  const { from, to, endValues } = bracket
  const found = brentRoot(excess, from, to, { endValues, tolerance: 1e-7 })
  return { currentMps: found.root, beyond: false, converged: found.converged }
}
