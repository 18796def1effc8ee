import { planDrag } from '@shared/design/plan-drag'
import { gravity } from '@shared/physics/constants'
import { liftGuideline } from '@shared/physics/lifting/guideline'
import { haulingPull, heavingSpeed, leavingWaterPull } from '@shared/physics/lifting/haul'
import type { Outlook } from '@shared/physics/coefficients'
import { ropeSafeLoad } from '@shared/physics/rope/strength'
import { ropeWetWeight } from '@shared/physics/rope/weight'
import type { Finding, Verdict } from '@shared/schema/check'
import { mm } from '@shared/design/si'
import { cannotTell, joined, sources, spreadOf, stateOver, verdictOf } from './judging'
import { forEachOutlook, growthOf, type Prepared } from './prepared'

/** Loads of one haul, with one outlook. */
interface Haul {
  readonly peakN: number
  /** Which moment asks the most. */
  readonly at: 'leaving' | 'hauling' | 'mud'
  /** What a person carries over the side, without jerks [kg]. */
  readonly carriedKg: number
  readonly ropeSafeN: number | undefined
}

/**
 * Whether the haul is within what the rope and a person can safely take.
 *
 * Peak of: pulling up through the water, breaking out of mud, and leaving the water with catch and drained water.
 * The rope's safe load counts its knot, its age and a safety factor. A person's load is a filter, not a limit.
 *
 * @returns verdict with the figures `peakN`, `peakKg`, `ropeSafeN`; cannot tell without the pot's weight
 * @source shared/physics/lifting; HSE L23 for the person
 */
export function lifts(prepared: Prepared): Verdict {
  const { mass } = prepared
  const missing = prepared.input.pot.measuredMassKg === undefined ? mass.missing : []
  if (missing.length > 0)
    return verdictOf([cannotTell('lifts:load', 'how heavy the haul is', joined(missing))])
  const hauls = forEachOutlook((outlook) => haulOf(prepared, outlook))
  return verdictOf([ropeFinding(prepared, hauls), personFinding(prepared, hauls)], {
    peakN: spreadOf(hauls, (haul) => haul.peakN),
    peakKg: spreadOf(hauls, (haul) => haul.peakN / gravity),
    ropeSafeN: hauls.middle.ropeSafeN,
  })
}

function haulOf(prepared: Prepared, outlook: Outlook): Haul {
  const { input, mass, conditions, rope, shape, sets, waterDensity } = prepared
  const set = sets[outlook]
  const dryKg = mass.dryMassKg + mass.baitKg
  const speedMps = conditions?.waves
    ? heavingSpeed(set.handHaulSpeed, conditions.waves.heightM, conditions.waves.periodS)
    : set.handHaulSpeed
  const wetWeightN = Math.max(0, prepared.wetWeightN)
  const hauling = haulingPull({
    wetWeightN,
    planDragAreaM2: planDrag(input.pot, shape, growthOf(prepared, set)).reduce(
      (sum, piece) => sum + piece.dragAreaM2,
      0,
    ),
    speedMps,
    ropeWetWeightNpm: rope ? Math.max(0, ropeWetWeight(rope.massKgPerM, rope.densityKgM3, waterDensity)) : 0,
    ropeLengthM: conditions?.depthHighM ?? input.pot.rope?.lengthM ?? 0,
    ropeDiameterM: mm(input.pot.rope?.diameterMm ?? 0),
    waterDensity,
  })
  const isMud = conditions?.bottom === 'mud' || conditions?.bottom === 'silt'
  const mud = isMud ? set.mudBreakout * wetWeightN : 0
  const leaving = leavingWaterPull(dryKg, mass.catchKg, set.drainedWater, set.jerk)
  const peakN = Math.max(hauling, mud, leaving)
  return {
    peakN,
    at: peakN === leaving ? 'leaving' : peakN === mud ? 'mud' : 'hauling',
    carriedKg: dryKg + mass.catchKg + set.drainedWater,
    ropeSafeN: safeLoad(prepared, outlook),
  }
}

function safeLoad({ input, rope, sets }: Prepared, outlook: Outlook): number | undefined {
  if (!rope || !input.pot.rope) return undefined
  const set = sets[outlook]
  return ropeSafeLoad(rope.breakingN, set.ropeSafety, {
    knot: set.knotStrength,
    age: input.wear?.ropeStrengthLeft ?? 1,
    wet: input.pot.rope.material === 'PA' ? set.wetNylonStrength : 1,
  })
}

type Hauls = Record<Outlook, Haul>

const moments = {
  leaving: 'as it leaves the water with catch and water in it',
  hauling: 'on the way up',
  mud: 'as it breaks out of the mud',
} as const

function ropeFinding(prepared: Prepared, hauls: Hauls): Finding {
  const { input, words, rope } = prepared
  const { middle, cautious, hopeful } = hauls
  if (middle.ropeSafeN === undefined || cautious.ropeSafeN === undefined || hopeful.ropeSafeN === undefined)
    return cannotTell(
      'lifts:rope',
      'whether the rope is strong enough',
      input.pot.rope ? 'its strength' : 'the rope',
      'rope',
    )
  const bears = (haul: Haul) => haul.peakN <= (haul.ropeSafeN ?? 0)
  const state = stateOver({ cautious: bears(cautious), middle: bears(middle), hopeful: bears(hopeful) })
  const aged = (input.wear?.ropeStrengthLeft ?? 1) < 0.995 ? ', aged as it is,' : ''
  const load = `${words.with(middle.peakN, 'N')} ${moments[middle.at]}`
  const sentence = {
    fails: `The haul peaks at ${load}; the rope${aged} is safe to ${words.with(middle.ropeSafeN, 'N')}. Use thicker rope.`,
    close: `The haul peaks at ${load}; the rope${aged} is safe to ${words.with(middle.ropeSafeN, 'N')}, by cautious figures to ${words.with(cautious.ropeSafeN, 'N')}.`,
    holds: `The haul peaks at ${load}; the rope${aged} is safe to ${words.with(middle.ropeSafeN, 'N')}.`,
  }
  return {
    rule: 'lifts:rope',
    state,
    part: 'rope',
    what: sentence[state],
    actual: middle.peakN,
    limit: middle.ropeSafeN,
    margin: middle.ropeSafeN - middle.peakN,
    unit: 'N',
    standing: 'engineering',
    source: rope ? { ...sources.rope, title: rope.source } : sources.rope,
  }
}

/**
 * The pot over the side, against the lifting filter: at knuckle height with arms out over the gunwale (cautious),
 * close to the body (middle), at the elbow close to the body (hopeful).
 */
function personFinding(prepared: Prepared, hauls: Hauls): Finding {
  const { words } = prepared
  const limits = {
    cautious: liftGuideline('men', 'knuckle', 'arms extended'),
    middle: liftGuideline('men', 'knuckle', 'close to body'),
    hopeful: liftGuideline('men', 'elbow', 'close to body'),
  }
  const state = stateOver(forEachOutlook((outlook) => hauls[outlook].carriedKg <= limits[outlook]))
  const load = words.with(hauls.middle.carriedKg, 'kg')
  const sentence = {
    fails: `Over the side it is ${load} with catch and water: two people, or a hauler.`,
    close: `Over the side it is ${load} with catch and water; within the ${words.with(limits.middle, 'kg')} advised close to the body, over the ${words.with(limits.cautious, 'kg')} at arm’s length.`,
    holds: `Over the side it is ${load} with catch and water, within the advice for one person.`,
  }
  return {
    rule: 'lifts:person',
    state,
    part: 'body',
    what: sentence[state],
    actual: hauls.middle.carriedKg,
    limit: limits.middle,
    margin: limits.middle - hauls.middle.carriedKg,
    unit: 'kg',
    standing: 'advice',
    source: sources.person,
  }
}
