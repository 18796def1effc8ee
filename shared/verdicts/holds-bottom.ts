import type { Outlook } from '@shared/physics/coefficients'
import { gravity } from '@shared/physics/constants'
import { criticalCurrents, type CriticalCurrents } from '@shared/physics/holding/critical-current'
import { ringMassNeeded } from '@shared/physics/holding/ring-needed'
import { standing, type Standing } from '@shared/physics/holding/standing-pot'
import type { Figure, Finding, Verdict } from '@shared/schema/check'
import type { Bottom } from '@shared/schema/water'
import type { Conditions } from '@shared/tides/conditions'
import { baseRing, ringAdvice, ringDensity, type Wanted } from './base-ring'
import { depthsOver, dryingFinding, tooShallow } from './depths'
import { cannotTell, isFiniteSpread, joined, sources, spreadOf, stateOver, verdictOf } from './judging'
import { landingOf, type Landing } from './landing'
import { forEachOutlook, standingIn, type Prepared } from './prepared'
import { rangeWarnings } from './range-warnings'

/** A pot solved in its strongest current, with one outlook. */
interface SolvedPot {
  readonly standing: Standing
  readonly currents: CriticalCurrents
  readonly ringKg: number | undefined
}

/**
 * Whether the pot stays where it was dropped at the strongest current, its rope pulling on it.
 *
 * Solved at low and at high water, the worse of the two, with the three outlooks: surface current at which it starts
 * to slide and to tip against the strongest expected.
 *
 * @returns verdict with the figures `slideCurrentMps`, `tipCurrentMps`, `worstCurrentMps`, `slideFactor`, `tipFactor`,
 *   `submergedWeightN`, `dragN`, `ringMassNeededKg`; cannot tell where frame, netting, rope, float, current or bottom
 *   is not known
 * @source shared/physics/holding
 */
export function holdsBottom(prepared: Prepared, landing = landingOf(prepared)): Verdict {
  const missing = missingFor(prepared)
  const weight = prepared.mass.missing.length === 0 ? { submergedWeightN: prepared.wetWeightN } : {}
  const { conditions } = prepared
  if (missing.length > 0 || !conditions?.bottom)
    return verdictOf([cannotTell('bottom:slides', 'whether it holds', joined(missing))], weight)
  const worst = worstDepth(prepared, conditions, conditions.bottom)
  if (worst === undefined) return verdictOf([tooShallow(prepared, conditions, 'bottom:slides')], weight)
  if (prepared.wetWeightN <= 0) return verdictOf([floatsAway(prepared)], weight)
  const place = { depthM: worst, currentMps: conditions.surfaceCurrentMps, bottom: conditions.bottom }
  const solved = forEachOutlook((outlook) => solvePot(prepared, { outlook, ...place }))
  return verdictOf(
    [...findingsOf(prepared, conditions, solved, place), ...landsBaseDown(prepared, landing)],
    {
      ...weight,
      ...figuresOf(conditions, solved),
    },
  )
}

type Solved = Record<Outlook, SolvedPot>
/** Where it is solved: of low and high water the worse, at the strongest current. */
type Place = Omit<Wanted, 'outlook'>

function missingFor({ input, mass, conditions, rope }: Prepared): string[] {
  const missing = [...mass.missing]
  if (input.trip?.tiedOff !== true) {
    if (!input.pot.rope) missing.push('the rope')
    else if (!rope) missing.push('the weight of the rope')
    if (!input.pot.float) missing.push('the float')
  }
  if (!conditions)
    missing.push(
      input.conditions && 'missing' in input.conditions ? input.conditions.missing : 'the current and depth',
    )
  else if (!conditions.bottom) missing.push('the bottom')
  return missing
}

/** Of low and high water, the one at which the middle outlook leaves less to spare. */
export function worstDepth(prepared: Prepared, conditions: Conditions, bottom: Bottom): number | undefined {
  const depths = depthsOver(prepared, conditions)
  if (!depths) return undefined
  if (depths.highM - depths.lowM < 0.05) return depths.highM
  const factorAt = (depthM: number) => {
    const { slideFactor, tipFactor } = standing(
      standingIn(prepared, 'middle', depthM, Math.max(conditions.surfaceCurrentMps, 0.05), bottom),
      'rough',
    )
    return Math.min(slideFactor, tipFactor)
  }
  return factorAt(depths.lowM) < factorAt(depths.highM) ? depths.lowM : depths.highM
}

function solvePot(
  prepared: Prepared,
  { outlook, depthM, currentMps, bottom }: Place & { readonly outlook: Outlook },
): SolvedPot {
  const pot = standingIn(prepared, outlook, depthM, currentMps, bottom)
  const now = standing(pot, 'rough')
  const ring = ringMassNeeded(now.hold, 1, ringDensity(prepared), prepared.waterDensity, gravity)
  return { standing: now, currents: criticalCurrents(pot), ringKg: ring?.addedMassKg }
}

function figuresOf(conditions: Conditions, solved: Solved): Record<string, Figure> {
  const ring = spreadOf(solved, (pot) => pot.ringKg ?? Number.NaN)
  return {
    slideCurrentMps: spreadOf(solved, (pot) => pot.currents.slide.currentMps),
    tipCurrentMps: spreadOf(solved, (pot) => pot.currents.tip.currentMps),
    worstCurrentMps: conditions.surfaceCurrentMps,
    slideFactor: spreadOf(solved, (pot) => pot.standing.slideFactor),
    tipFactor: spreadOf(solved, (pot) => pot.standing.tipFactor),
    dragN: spreadOf(solved, (pot) => pot.standing.drag.dragN),
    ...(isFiniteSpread(ring) ? { ringMassNeededKg: ring } : {}),
  }
}

function findingsOf(prepared: Prepared, conditions: Conditions, solved: Solved, place: Place): Finding[] {
  return [
    movement(prepared, solved, place, 'slide'),
    movement(prepared, solved, place, 'tip'),
    ...lineFailure(solved),
    ...dryingFinding(prepared, conditions),
    ...rangeWarnings(prepared, conditions),
    ...tiedOff(prepared),
  ]
}

const verbs = {
  slide: { rule: 'bottom:slides', does: 'Slides', todo: 'slide' },
  tip: { rule: 'bottom:tips', does: 'Tips over', todo: 'tip over' },
} as const

function movement(prepared: Prepared, solved: Solved, place: Place, how: 'slide' | 'tip'): Finding {
  const { words } = prepared
  const worst = place.currentMps
  const limit = spreadOf(solved, (pot) => pot.currents[how].currentMps)
  // The factor at the current itself decides; the critical current is only found to a tolerance.
  const stays = (pot: SolvedPot) => (how === 'slide' ? pot.standing.slideFactor : pot.standing.tipFactor) >= 1
  const state = stateOver({
    cautious: stays(solved.cautious),
    middle: stays(solved.middle),
    hopeful: stays(solved.hopeful),
  })
  const { rule, does, todo } = verbs[how]
  const here = `the strongest current here is ${words.bare(worst, 'm/s')}`
  const advice = (outlook: Wanted['outlook']) =>
    state === 'holds' ? '' : ringAdvice(prepared, solved[outlook].ringKg, { outlook, ...place })
  const sentence = {
    fails: isLifted(prepared, solved.middle)
      ? `${does}: the float lifts it by the rope. Use a longer rope, or a smaller float.`
      : `${does} ${limit.mid > 0 ? `at ${words.with(limit.mid, 'm/s')}` : inAnyCurrent}; ${here}.${advice('middle')}`,
    close: `May ${todo} ${limit.low > 0 ? `from ${words.with(limit.low, 'm/s')}` : inAnyCurrent}, likely ${words.bare(limit.mid, 'm/s')}; ${here}.${advice('cautious')}`,
    holds: solved.cautious.currents[how].beyond
      ? `Does not ${todo} in any current that was tried.`
      : `Does not ${todo} below ${words.with(limit.low, 'm/s')}; ${here}.`,
  }
  return {
    rule,
    state,
    part: baseRing(prepared) ? 'base-ring' : 'body',
    what: sentence[state],
    actual: limit.mid,
    limit: worst,
    margin: limit.mid - worst,
    unit: 'm/s',
    standing: 'engineering',
    source: sources.holding,
  }
}

// Where waves alone move it.
const inAnyCurrent = 'even in still water'

const isLifted = ({ wetWeightN }: Prepared, { standing: { hold } }: SolvedPot): boolean =>
  hold.ropeUpliftN > wetWeightN

function lineFailure(solved: Solved): Finding[] {
  const line = Object.values(solved)
    .map((pot) => pot.standing.line)
    .find((tried) => tried?.state === 'failed')
  if (line?.state !== 'failed') return []
  return [
    {
      rule: 'bottom:rope-pull',
      state: 'cannot-tell',
      part: 'rope',
      what: `The pull of the rope is not counted: it could not be solved. ${line.reason}`,
      missing: 'the pull of the rope',
      standing: 'engineering',
      source: sources.line,
    },
  ]
}

function landsBaseDown({ words }: Prepared, landing: Landing | undefined): Finding[] {
  if (!landing) return []
  const { state, likely } = landing
  const sentence = {
    holds: `Sinks base down at about ${words.with(likely.speedMps, 'm/s')}.`,
    close:
      'Likely sinks base down, but little rights it. A heavier base ring keeps it base down for certain.',
    fails: 'May turn over on its way down: its weight sits high. A heavier base ring keeps it base down.',
  }
  return [
    {
      rule: 'bottom:lands',
      state,
      part: 'body',
      what: sentence[state],
      actual: likely.rightingArmM,
      limit: 0,
      margin: likely.rightingArmM,
      unit: 'm',
      standing: 'engineering',
      source: sources.size,
    },
  ]
}

function floatsAway({ wetWeightN, words }: Prepared): Finding {
  return {
    rule: 'bottom:slides',
    state: 'fails',
    part: 'body',
    what: `The pot floats: in the water it pulls up with ${words.with(Math.abs(wetWeightN), 'N')}.`,
    actual: wetWeightN,
    limit: 0,
    margin: wetWeightN,
    unit: 'N',
    standing: 'engineering',
    source: sources.size,
  }
}

function tiedOff({ input }: Prepared): Finding[] {
  if (input.trip?.tiedOff !== true) return []
  return [
    {
      rule: 'bottom:tied-off',
      state: 'holds',
      part: 'rope',
      what: 'Tied to something fixed, so no float pulls on it. The rope must not come tight.',
      standing: 'engineering',
    },
  ]
}
