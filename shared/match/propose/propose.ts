import type { Check } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import { openPoints } from './acceptance'
import { bindsOf, obstaclesOf, type Bind } from './binding'
import { searchGear, type Found, type Objective } from './gear-search'
import { carriedMass, partsCost } from './objectives'
import { checkAt, type ProposeRequest } from './request'
import { fitTrade } from './trade-fit'

export type { Bind } from './binding'
export type { ProposeRequest } from './request'

/** A design that passes everything cautiously, everywhere. */
export interface Proposal {
  readonly pot: Pot
  readonly carriedKg: number | undefined
  /** In the currency of the user's prices; left out while a part has none. */
  readonly cost: number | undefined
  readonly checks: readonly { readonly waterId: string; readonly check: Check }[]
  /** What keeps it from being lighter. */
  readonly binds: readonly Bind[]
  /** Points of law and of fishing that no part can settle, a sentence each. */
  readonly open: readonly string[]
}

export interface ProposeOutcome {
  readonly lightest: Proposal | undefined
  /** Left out where prices are missing. */
  readonly cheapest: Proposal | undefined
  /** Where nothing passes: the shape that comes nearest, and what stands in its way. */
  readonly nearest: { readonly pot: Pot; readonly obstacles: readonly Bind[] } | undefined
}

export interface ProposeProgress {
  readonly shape: string
  /** Shapes done, of how many. */
  readonly done: number
  readonly of: number
  readonly lightestKg: number | undefined
}

/**
 * The lightest and the cheapest design that passes all six verdicts cautiously at every place.
 *
 * Each shape is first fitted out for the rules and the crabs, then given the smallest tackle and base ring. Nothing
 * is drawn by lot and every list has its order, so the same question has the same answer.
 *
 * @param request shapes, places, materials, rules, trip and limits
 * @yields progress after every step; whoever asks may stop at any of them
 * @returns the designs found with what binds them, or the nearest with what stands in its way
 */
export function* propose(request: ProposeRequest): Generator<ProposeProgress, ProposeOutcome> {
  const { shapes, places, setting } = request
  const mass = carriedMass(setting.materials)
  const cost = partsCost(setting.materials)
  const fitted: Pot[] = []
  let lightest: Found | undefined
  let cheapest: Found | undefined

  for (const [done, shape] of shapes.entries()) {
    const progress = () => ({ shape: shape.name, done, of: shapes.length, lightestKg: lightest?.value })
    yield progress()
    const pot = proposed(fitTrade(shape, places, setting), shape)
    fitted.push(pot)
    lightest = yield* reporting(
      searchGear(pot, request, mass, lightest?.value ?? Infinity),
      progress,
      lightest,
    )
    if (cost(pot) !== undefined)
      cheapest = yield* reporting(
        searchGear(pot, request, cost, cheapest?.value ?? Infinity),
        progress,
        cheapest,
      )
  }
  const nearest = lightest || cheapest ? undefined : yield* nearestOf(fitted, request, mass)
  return {
    lightest: lightest && proposalOf(lightest.pot, request, mass, cost),
    cheapest: cheapest && proposalOf(cheapest.pot, request, mass, cost),
    nearest,
  }
}

/** Runs one search, telling progress at each of its steps; keeps the earlier find where nothing is better. */
function* reporting(
  search: Generator<void, Found | undefined>,
  progress: () => ProposeProgress,
  before: Found | undefined,
): Generator<ProposeProgress, Found | undefined> {
  for (;;) {
    const step = search.next()
    if (step.done === true) return step.value ?? before
    yield progress()
  }
}

const proposed = (pot: Pot, shape: Pot): Pot => ({
  ...pot,
  id: `proposed-${shape.id}`.slice(0, 64),
  name: `${shape.name}, proposed`.slice(0, 120),
})

function proposalOf(pot: Pot, request: ProposeRequest, mass: Objective, cost: Objective): Proposal {
  const checks = request.places.map((place) => ({
    waterId: place.water.id,
    check: checkAt(pot, place, request.setting),
  }))
  return {
    pot,
    carriedKg: mass(pot),
    cost: cost(pot),
    checks,
    binds: bindsOf(pot, request),
    open: openPoints(checks.map(({ check }) => check)),
  }
}

/**
 * Where nothing passes: the lightest design that does all but lift and stow, for two hands or a hauler; failing that,
 * the fitted shape with the fewest obstacles.
 */
function* nearestOf(
  fitted: readonly Pot[],
  request: ProposeRequest,
  mass: Objective,
): Generator<ProposeProgress, ProposeOutcome['nearest']> {
  const { shapes, places, setting, waived = [] } = request
  const eased: ProposeRequest = { shapes, places, setting, waived: [...waived, 'lifts', 'stows'] }
  let best: Found | undefined
  for (const [done, pot] of fitted.entries()) {
    const progress = () => ({ shape: pot.name, done, of: fitted.length, lightestKg: undefined })
    best = yield* reporting(searchGear(pot, eased, mass, best?.value ?? Infinity), progress, best)
  }
  const candidates = best ? [best.pot] : fitted
  return candidates
    .map((pot) => ({ pot, obstacles: obstaclesOf(pot, request) }))
    .sort((a, b) => a.obstacles.length - b.obstacles.length)[0]
}
