import { solveLine } from './line'
import type { LineProblem } from './problem'

/**
 * Rope that lies on the surface when the stream stops: a hazard to propellers and animals.
 *
 * @param problem line; its own current is not used
 * @returns length [m]; `undefined` for a line that cannot be solved
 * @source balance of rope and float in still water (see `solveLine`)
 */
export function slackAtSlackWater(problem: LineProblem): number | undefined {
  const still = solveLine({ ...problem, surfaceCurrentMps: 0 })
  return still.state === 'failed' ? undefined : still.slackSurfaceM
}
