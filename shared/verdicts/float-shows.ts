import { floatBodyOf } from '@shared/design/float-body-of'
import type { Outlook } from '@shared/physics/coefficients'
import { netBuoyancy } from '@shared/physics/float/float'
import type { Figure, Finding, Verdict } from '@shared/schema/check'
import type { Conditions } from '@shared/tides/conditions'
import { depthsOver, tooShallow, type Depths } from './depths'
import { cannotTell, isFiniteSpread, joined, sources, spreadOf, stateOver, verdictOf } from './judging'
import { forEachOutlook, type Prepared } from './prepared'
import { ropeAdrift } from './rope-adrift'
import { ropeLength } from './rope-length'
import { solvedLine, type SolvedLine } from './solved-line'

type Solved = Record<Outlook, SolvedLine>

/**
 * Whether the float shows, with buoyancy to spare, at every stage of the tide in the strongest current.
 *
 * High water asks most of the float: the rope is shortest over the depth there. The buoyancy used times the reserve
 * must not exceed the net buoyancy.
 *
 * @returns verdict with the figures `verticalN`, `reserveN`, `pullUnderCurrentMps`, `dipM`, `minimumRopeM`, `swingM`,
 *   `potPullN`, `potUpliftN`; tied off it holds, for no float is needed; cannot tell where the tide is not known
 * @source shared/physics/line
 */
export function floatShows(prepared: Prepared): Verdict {
  const { input, conditions } = prepared
  if (input.trip?.tiedOff === true) return verdictOf([noFloatNeeded])
  const missing = missingFor(prepared)
  if (missing.length > 0 || !conditions)
    return verdictOf([cannotTell('float:shows', 'whether the float shows', joined(missing))])
  if (input.pot.float && netBuoyancy(floatBodyOf(input.pot.float), prepared.waterDensity) <= 0)
    return verdictOf([sinksByItself])
  const depths = depthsOver(prepared, conditions)
  if (!depths) return verdictOf([tooShallow(prepared, conditions, 'float:shows')])
  const tried = forEachOutlook((outlook) => solvedLine(prepared, outlook, depths, conditions))
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

function figuresOf(solved: Solved): Record<string, Figure> {
  const figures = {
    verticalN: spreadOf(solved, (line) => line.high.verticalN),
    reserveN: spreadOf(solved, (line) => line.buoyancyN - line.high.verticalN),
    pullUnderCurrentMps: spreadOf(solved, (line) => line.pullUnder?.currentMps ?? Number.NaN),
    dipM: spreadOf(solved, (line) => line.high.dipM),
    minimumRopeM: spreadOf(solved, (line) => line.minimumRopeM),
    swingM: spreadOf(solved, (line) => line.swingM),
    potPullN: spreadOf(solved, (line) => line.high.potHorizontalN),
    potUpliftN: spreadOf(solved, (line) => line.high.potUpliftN),
  }
  return Object.fromEntries(Object.entries(figures).filter(([, spread]) => isFiniteSpread(spread)))
}

function findingsOf(prepared: Prepared, conditions: Conditions, depths: Depths, solved: Solved): Finding[] {
  return [
    shows(prepared, conditions, solved),
    ropeLength(prepared, solved),
    ...tideUnknown(conditions),
    ...ropeAdrift(prepared, depths),
    ...notConverged(solved),
  ]
}

const isUp = ({ high, reserve, buoyancyN }: SolvedLine) =>
  high.state === 'surface' && high.verticalN * reserve <= buoyancyN

function shows(prepared: Prepared, conditions: Conditions, solved: Solved): Finding {
  const { words } = prepared
  const { middle, cautious } = solved
  const state = stateOver(forEachOutlook((outlook) => isUp(solved[outlook])))
  const speed = conditions.surfaceCurrentMps
  const current = speed > 0 ? words.with(speed, 'm/s') : 'still water'
  const here = `${current} at ${conditions.missingTide ? 'the depth given' : 'high water'}`
  const used = words.with(middle.high.verticalN, 'N')
  const has = words.bare(middle.buoyancyN, 'N')
  const toSpare = words.with(middle.buoyancyN - middle.high.verticalN, 'N')
  const sentence = {
    fails:
      middle.high.state === 'under'
        ? `Drawn ${words.with(middle.high.dipM, 'm')} under in ${here}.${betterRope(prepared, middle)}`
        : `Shows in ${here}, but the rope takes ${used} of its ${has}: too little is left for waves.${betterRope(prepared, middle)}`,
    close:
      cautious.high.state === 'under'
        ? `Shows in ${here} by the middle figures; by the cautious ones it is drawn under.`
        : `Shows in ${here} with ${toSpare} to spare; little by the cautious figures.`,
    holds: `Shows in ${here}: the rope takes ${used} of its ${has}.`,
  }
  const wantedN = middle.high.verticalN * middle.reserve
  return {
    rule: 'float:shows',
    state,
    part: 'float',
    what: sentence[state],
    actual: wantedN,
    limit: middle.buoyancyN,
    margin: middle.buoyancyN - wantedN,
    unit: 'N',
    standing: 'engineering',
    source: sources.line,
  }
}

/** What rope would do, where one does. */
function betterRope({ input, words }: Prepared, line: SolvedLine): string {
  const now = input.pot.rope?.lengthM ?? 0
  if (!Number.isFinite(line.minimumRopeM))
    return ' No length of rope keeps it up: use a larger float, or a thinner or lighter rope.'
  return line.minimumRopeM > now
    ? ` A rope of ${words.atLeast(line.minimumRopeM, 'm')} would keep it up.`
    : ''
}

/** Without a tide the float is solved at the charted depth alone; at high water it may not show. */
function tideUnknown({ missingTide }: Conditions): Finding[] {
  return missingTide
    ? [cannotTell('float:tide', 'whether the float shows at high water', missingTide, 'water')]
    : []
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
