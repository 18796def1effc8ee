import { LineBalance } from './balance'
import type { LineProblem } from './problem'
import { unsolvable } from './unsolvable'

/** Ropes are not followed beyond this length [m]. */
const longestRopeM = 1000

/**
 * Shortest rope with which the float gives no more than a share of its buoyancy.
 *
 * With the buoyancy used held at V = share · B the rope is followed from the float down until it comes to the height
 * of the bridle: the length it took is the answer, so nothing is searched. A longer rope then asks for less of the
 * float, except where its own weight counts; solve it to see.
 *
 * @param problem line in the strongest current and at the greatest depth; its own rope length is not used
 * @param share   share of the net buoyancy that may be used [-], above 0 to 1
 * @returns length [m]; `undefined` where no rope up to 1000 m does it, or the line cannot be solved
 * @source balance of rope and float (see `solveLine`)
 */
export function minimumRope(problem: LineProblem, share: number): number | undefined {
  const near = lengthWithin(problem, share, longestRopeM)
  // The first pass works to a share of the longest rope; the second, to a share of the rope itself.
  return near === undefined ? undefined : lengthWithin(problem, share, Math.min(longestRopeM, 1.1 * near))
}

function lengthWithin(problem: LineProblem, share: number, mostM: number): number | undefined {
  const endless = { ...problem, ropeLengthM: mostM }
  return unsolvable(endless) === undefined ? new LineBalance(endless).lengthUnder(share) : undefined
}
