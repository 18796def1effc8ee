import { LineBalance, type Accuracy } from './balance'
import { failure, type LineProblem, type LineResult } from './problem'
import { unsolvable } from './unsolvable'

export type { Accuracy } from './balance'
export type { LineProblem, LineResult, LineSolution } from './problem'

/**
 * Balance of a rope between a pot and its float in a current, in the vertical plane of the current.
 *
 * The rope does not stretch. Followed from the float down (`HangingRope`), its lower end must come out at the pot: a
 * root in one unknown. At the surface that is the buoyancy used V, or, for a floating rope longer than it need be,
 * the length lying on the surface. When V would exceed the float's net buoyancy the float is under: V is the net
 * buoyancy and the unknown is the height of the float. The drag of the float follows its draft.
 *
 * A sinking rope with slack lies level at the height of the bridle from where its upward pull ends; rope on the bed
 * takes no drag and gives no friction.
 *
 * @param problem  rope, float, water and the height of the bridle; see `LineProblem`
 * @param accuracy `fine`, or `rough` at about a third of the time
 * @returns the balance with its residual, or `failed` with the reason; never throws, at most some 160 tries
 * @source two-point boundary problem of an inextensible line with loads by the independence principle; Berteaux,
 *   Buoy Engineering, 1976; Bell 1977, Pacific Marine Science Report 77-12
 */
export function solveLine(problem: LineProblem, accuracy: Accuracy = 'fine'): LineResult {
  const reason = unsolvable(problem)
  if (reason !== undefined) return failure(reason)
  return new LineBalance(problem, accuracy).solve()
}
