import { brentRoot } from '@shared/numerics/brent-root'
import { strongestCurrentMps, type CurrentLimit } from '@shared/physics/line/pull-under'
import type { Hold } from './factors'
import { standing, type Standing, type StandingPot } from './standing-pot'

export interface CriticalCurrents {
  readonly slide: CurrentLimit
  readonly tip: CurrentLimit
  /** Number of currents at which pot and rope were solved. */
  readonly solves: number
}

const tolerance = 1e-3

/**
 * Surface currents at which a pot starts to slide and to tip, with the rope's pull solved at each of them.
 *
 * Loads grow nearly with U², so the root of load over what holds runs nearly straight in U: from the current at hand
 * the two currents where it is 1 are bracketed by that line and closed with Brent's method, sharing every solve. Waves
 * stay as they are.
 *
 * @param pot pot, rope and water; its own current is where the search starts
 * @returns surface speeds [m/s] to about 0.1 %; 0 where it moves in still water, `beyond` where it stays up to 8 m/s
 * @source statics (see `holdFactors`) with the balance of the rope (see `solveLine`)
 */
export function criticalCurrents(pot: StandingPot): CriticalCurrents {
  const known = new Map<number, Standing>()
  const at = (currentMps: number): Standing => {
    const before = known.get(currentMps)
    if (before) return before
    const found = standing({ ...pot, current: { ...pot.current, surfaceCurrentMps: currentMps } }, 'rough')
    known.set(currentMps, found)
    return found
  }
  const start = pot.current.surfaceCurrentMps > 0 ? pot.current.surfaceCurrentMps : 1
  const slide = limitOf((u) => slideLoad(at(u).hold), start)
  const tip = limitOf(
    (u) => 1 / Math.max(at(u).tipFactor, 1e-4),
    slide.currentMps > 0 ? slide.currentMps : start,
  )
  return { slide, tip, solves: known.size }
}

interface Point {
  readonly u: number
  readonly excess: number
}

/** What moves the pot along over what holds it there: with lift on this side all of it grows with U². */
function slideLoad(hold: Hold): number {
  const slope = hold.slopeRad ?? 0
  const up = Math.max(0, hold.liftN) + Math.max(0, hold.ropeUpliftN)
  const push = hold.dragN + hold.ropeHorizontalN + hold.wetWeightN * Math.sin(slope)
  return (push + hold.friction * up) / Math.max(hold.friction * hold.wetWeightN * Math.cos(slope), 1e-9)
}

function limitOf(loadAt: (currentMps: number) => number, start: number): CurrentLimit {
  // Positive where the pot moves; a pot without any weight on the bed counts as far beyond moving.
  const excess = (u: number) => Math.min(100, Math.sqrt(Math.max(loadAt(u), 0))) - 1
  let below: Point = { u: 0, excess: excess(0) }
  if (below.excess >= 0) return { currentMps: 0, beyond: false, converged: true }
  let above: Point | undefined
  let guess = start
  // Each try aims at the root by the straight line and a little past it, farther each time.
  for (let margin = 0.03; !above || (below.u === 0 && margin < 1); margin *= 2) {
    const point = { u: guess, excess: excess(guess) }
    if (point.excess >= 0) above = point
    else if (guess >= strongestCurrentMps) return { currentMps: guess, beyond: true, converged: true }
    else below = point
    if (above && below.u > 0) break
    const past = above ? 1 / (1 + margin) : 1 + margin
    guess = Math.min(strongestCurrentMps, (guess * past) / (1 + point.excess))
  }
  const endValues = [below.excess, above.excess] as const
  const found = brentRoot(excess, below.u, above.u, {
    endValues,
    tolerance: tolerance * above.u,
    residualTolerance: tolerance / 2,
  })
  return { currentMps: found.root, beyond: false, converged: found.converged }
}
