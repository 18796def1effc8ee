import { floatBodyOf } from '@shared/design/float-body-of'
import type { Outlook } from '@shared/physics/coefficients'
import { netBuoyancy } from '@shared/physics/float/float'
import { solveLine, type LineSolution } from '@shared/physics/line/line'
import { minimumRope } from '@shared/physics/line/minimum-rope'
import { pullUnderCurrent, type CurrentLimit } from '@shared/physics/line/pull-under'
import type { Figure, Finding, Verdict } from '@shared/schema/check'
import type { Conditions } from '@shared/tides/conditions'
import { depthsOver, type Depths } from './depths'
import { cannotTell, isFiniteSpread, joined, sources, spreadOf, stateOver, verdictOf } from './judging'
import { forEachOutlook, lineIn, type Prepared } from './prepared'
import { ropeAdrift } from './rope-adrift'

/** Rope and float solved in one water, with one outlook. */
interface SolvedLine {
  /** At high water in the strongest current. */
  readonly high: LineSolution
  /** At low water in the strongest current: the widest swing. */
  readonly low: LineSolution | undefined
  readonly buoyancyN: number
  /** Buoyancy wanted over the buoyancy used. */
  readonly reserve: number
  readonly pullUnder: CurrentLimit | undefined
  /** Shortest rope, by depth and by buoyancy; NaN where none does it. */
  readonly minimumRopeM: number
}

type Solved = Record<Outlook, SolvedLine>

/**
 * Whether the float shows, with buoyancy to spare, at every stage of the tide in the strongest current.
 *
 * High water asks most of the float: the rope is shortest over the depth there. The buoyancy used times the reserve
 * must not exceed the net buoyancy.
 *
 * @returns verdict with the figures `verticalN`, `reserveN`, `pullUnderCurrentMps`, `dipM`, `minimumRopeM`, `swingM`,
 *   `potPullN`, `potUpliftN`; tied off it holds, for no float is needed
 * @source shared/physics/line
 */
export function floatShows(prepared: Prepared): Verdict {
  const { input, conditions } = prepared
  if (input.trip?.tiedOff === true && !input.pot.float) return verdictOf([noFloatNeeded])
  const missing = missingFor(prepared)
  if (missing.length > 0 || !conditions)
    return verdictOf([cannotTell('float:shows', 'whether the float shows', joined(missing))])
  if (input.pot.float && netBuoyancy(floatBodyOf(input.pot.float), prepared.waterDensity) <= 0)
    return verdictOf([sinksByItself])
  const depths = depthsOver(prepared, conditions)
  if (!depths)
    return verdictOf([
      cannotTell('float:shows', 'whether the float shows', 'water deeper than the pot is high', 'water'),
    ])
  const tried = forEachOutlook((outlook) => solveRope(prepared, outlook, depths, conditions))
  const { cautious, middle, hopeful } = tried
  if (typeof cautious === 'string' || typeof middle === 'string' || typeof hopeful === 'string') {
    const reason = [cautious, middle, hopeful].find((outcome) => typeof outcome === 'string')
    return verdictOf([noBalance(reason ?? '')])
  }
  const solved = { cautious, middle, hopeful }
  return verdictOf(findingsOf(prepared, conditions, depths, solved), figuresOf(solved))
}

function missingFor({ input, conditions, rope }: Prepared): string[] {
  const missing: string[] = []
  if (!input.pot.float) missing.push('the float')
  if (!input.pot.rope) missing.push('the rope')
  else if (!rope) missing.push('the weight of the rope')
  if (!conditions)
    missing.push(
      input.conditions && 'missing' in input.conditions ? input.conditions.missing : 'the current and depth',
    )
  return missing
}

function solveRope(
  prepared: Prepared,
  outlook: Outlook,
  depths: Depths,
  conditions: Conditions,
): SolvedLine | string {
  const set = prepared.sets[outlook]
  const problem = lineIn(prepared, set, depths.highM, conditions.surfaceCurrentMps)
  const shallow = lineIn(prepared, set, depths.lowM, conditions.surfaceCurrentMps)
  if (!problem || !shallow) return 'The rope is not known.'
  const high = solveLine(problem, 'rough')
  if (high.state === 'failed') return high.reason
  const low = depths.lowM < depths.highM ? solveLine(shallow, 'rough') : high
  const byBuoyancy = minimumRope(problem, 1 / set.floatReserve)
  const buoyancyN = netBuoyancy(problem.float, problem.waterDensity)
  const byDepth = lengthByDepth(prepared, outlook, depths)
  return {
    high,
    low: low.state === 'failed' ? undefined : low,
    buoyancyN,
    reserve: set.floatReserve,
    pullUnder: pullUnderCurrent(problem, 1, {
      // The rope's loads grow nearly with the square of the current.
      near: conditions.surfaceCurrentMps * Math.sqrt(buoyancyN / Math.max(high.verticalN, 1e-3)),
      tolerance: 1e-3,
    }),
    minimumRopeM: byBuoyancy === undefined ? Number.NaN : Math.max(byDepth, byBuoyancy),
  }
}

function figuresOf(solved: Solved): Record<string, Figure> {
  const figures: Record<string, Figure> = {
    verticalN: spreadOf(solved, (line) => line.high.verticalN),
    reserveN: spreadOf(solved, (line) => line.buoyancyN - line.high.verticalN),
    pullUnderCurrentMps: spreadOf(solved, (line) => line.pullUnder?.currentMps ?? Number.NaN),
    dipM: spreadOf(solved, (line) => line.high.dipM),
    minimumRopeM: spreadOf(solved, (line) => line.minimumRopeM),
    swingM: spreadOf(solved, (line) => Math.max(line.high.offsetM, line.low?.offsetM ?? 0)),
    potPullN: spreadOf(solved, (line) => line.high.potHorizontalN),
    potUpliftN: spreadOf(solved, (line) => line.high.potUpliftN),
  }
  return Object.fromEntries(
    Object.entries(figures).filter(
      ([, figure]) => typeof figure !== 'object' || Array.isArray(figure) || isFiniteSpread(figure),
    ),
  )
}

function findingsOf(prepared: Prepared, conditions: Conditions, depths: Depths, solved: Solved): Finding[] {
  return [
    shows(prepared, conditions, solved),
    longEnough(prepared, depths, solved),
    ...ropeAdrift(prepared, depths),
    ...notConverged(solved),
  ]
}

function shows(prepared: Prepared, conditions: Conditions, solved: Solved): Finding {
  const { words } = prepared
  const { middle, cautious } = solved
  const isUp = (line: SolvedLine) =>
    line.high.state === 'surface' && line.high.verticalN * line.reserve <= line.buoyancyN
  const state = stateOver({ cautious: isUp(cautious), middle: isUp(middle), hopeful: isUp(solved.hopeful) })
  const current = `${words.with(conditions.surfaceCurrentMps, 'm/s')} at high water`
  const used = words.with(middle.high.verticalN, 'N')
  const has = words.bare(middle.buoyancyN, 'N')
  const under = middle.high.state === 'under'
  const sentence = {
    fails: under
      ? `Drawn ${words.with(middle.high.dipM, 'm')} under in ${current}.${betterRope(prepared, middle)}`
      : `Shows in ${current}, but the rope takes ${used} of its ${has}: too little is left for waves.${betterRope(prepared, middle)}`,
    close:
      cautious.high.state === 'under'
        ? `Shows in ${current} by the middle figures; by the cautious ones it is drawn under.`
        : `Shows in ${current} with ${words.with(middle.buoyancyN - middle.high.verticalN, 'N')} to spare; little by the cautious figures.`,
    holds: `Shows in ${current}: the rope takes ${used} of its ${has}.`,
  }
  return {
    rule: 'float:shows',
    state,
    part: 'float',
    what: sentence[state],
    actual: middle.high.verticalN * middle.reserve,
    limit: middle.buoyancyN,
    margin: middle.buoyancyN - middle.high.verticalN * middle.reserve,
    unit: 'N',
    standing: 'engineering',
    source: sources.line,
  }
}

/** What rope would do, where one does. */
function betterRope({ input, words }: Prepared, line: SolvedLine): string {
  const now = input.pot.rope?.lengthM ?? 0
  if (!Number.isFinite(line.minimumRopeM))
    return ' No longer rope helps; use a larger float or a thinner rope.'
  return line.minimumRopeM > now ? ` A rope of ${words.with(line.minimumRopeM, 'm')} would keep it up.` : ''
}

/** Depth at high water, half a wave and rope in hand [m]. */
function lengthByDepth({ conditions, sets, stance }: Prepared, outlook: Outlook, depths: Depths): number {
  const waveM = conditions?.waves?.heightM ?? 0
  return depths.highM + waveM / 2 + sets[outlook].handlingRope - stance.bridleHeightM
}

/** Whether the rope is long enough for the depth. */
function longEnough(prepared: Prepared, depths: Depths, solved: Solved): Finding {
  const { input, words } = prepared
  const length = input.pot.rope?.lengthM ?? 0
  const needed = (outlook: Outlook) => lengthByDepth(prepared, outlook, depths)
  const state = stateOver(forEachOutlook((outlook) => length >= needed(outlook)))
  const wanted = needed('middle')
  const best = Math.max(wanted, Number.isFinite(solved.middle.minimumRopeM) ? solved.middle.minimumRopeM : 0)
  return {
    rule: 'float:rope-length',
    state,
    part: 'rope',
    what:
      state === 'fails'
        ? `The rope is ${words.with(length, 'm')}; at high water the depth here asks for ${words.with(wanted, 'm')} at least.`
        : `The rope is ${words.with(length, 'm')}; ${words.bare(best, 'm')} is the least for this depth and current.`,
    actual: length,
    limit: wanted,
    margin: length - wanted,
    unit: 'm',
    standing: 'engineering',
    source: sources.length,
  }
}

function notConverged(solved: Solved): Finding[] {
  if (solved.middle.high.converged && solved.cautious.high.converged) return []
  return [
    {
      rule: 'float:converged',
      state: 'cannot-tell',
      part: 'rope',
      what: 'The shape of the rope was found only roughly; take these figures with care.',
      missing: 'a closer balance of the rope',
      standing: 'engineering',
      source: sources.line,
    },
  ]
}

const noBalance = (reason: string): Finding => ({
  rule: 'float:shows',
  state: 'cannot-tell',
  part: 'rope',
  what: `Cannot tell whether the float shows. ${reason}`,
  missing: 'a balance of rope and float',
  standing: 'engineering',
  source: sources.line,
})

const sinksByItself: Finding = {
  rule: 'float:shows',
  state: 'fails',
  part: 'float',
  what: 'The float is too heavy for its size and sinks by itself.',
  standing: 'engineering',
  source: sources.line,
}

const noFloatNeeded: Finding = {
  rule: 'float:shows',
  state: 'holds',
  part: 'float',
  what: 'Tied to something fixed, so no float has to show.',
  standing: 'engineering',
}
