import type { Outlook } from '@shared/physics/coefficients'
import { comfortablePull, easyRopeMm } from '@shared/physics/lifting/grip'
import { liftGuideline, type Lifter } from '@shared/physics/lifting/guideline'
import type { Finding, Verdict } from '@shared/schema/check'
import { advisedKg, haulOf, type Haul } from './haul'
import { cannotTell, joined, sources, spreadOf, stateOver, verdictOf } from './judging'
import { forEachOutlook, type Prepared } from './prepared'

type Hauls = Record<Outlook, Haul>

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
  return verdictOf(
    [ropeFinding(prepared, hauls), personFinding(prepared, hauls), ...gripFinding(prepared, hauls.middle)],
    {
      peakN: spreadOf(hauls, (haul) => haul.loads.peakN),
      peakKg: spreadOf(hauls, (haul) => haul.loads.peakKg),
      ropeSafeN: hauls.middle.ropeSafeN,
    },
  )
}

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
  const bears = (haul: Haul) => haul.loads.peakN <= (haul.ropeSafeN ?? 0)
  const state = stateOver({ cautious: bears(cautious), middle: bears(middle), hopeful: bears(hopeful) })
  const aged = (input.wear?.ropeStrengthLeft ?? 1) < 0.995 ? ', aged as it is,' : ''
  const { peakN } = middle.loads
  const peaks = `The haul peaks at ${words.with(peakN, 'N')} ${moment(prepared, middle)}; the rope${aged} is safe to ${words.with(middle.ropeSafeN, 'N')}`
  const sentence = {
    fails: `${peaks}. Use thicker rope.`,
    close: `${peaks}; by cautious figures ${words.bare(cautious.loads.peakN, 'N')} against ${words.with(cautious.ropeSafeN, 'N')}.`,
    holds: `${peaks}.`,
  }
  return {
    rule: 'lifts:rope',
    state,
    part: 'rope',
    what: sentence[state],
    actual: peakN,
    limit: middle.ropeSafeN,
    margin: middle.ropeSafeN - peakN,
    unit: 'N',
    standing: 'engineering',
    source: rope ? { title: rope.source, confidence: rope.confidence } : sources.rope,
  }
}

function moment({ input }: Prepared, { loads, byHauler }: Haul): string {
  switch (loads.stage) {
    case 'leaving the water':
      return `as it leaves the water with ${whatComesUp(input.pot.catchKg)}`
    case 'coming up':
      return byHauler ? 'on the way up by a hauler' : 'on the way up'
    case 'breaking out':
      return 'as it breaks out of the mud'
  }
}

const whatComesUp = (catchKg: number | undefined) =>
  catchKg === undefined ? 'water in it and no catch counted' : 'catch and water in it'

/**
 * The pot over the side, against the lifting filter: at knuckle height with arms out over the gunwale (cautious),
 * close to the body (middle), at the elbow close to the body (hopeful).
 */
function personFinding({ input, words }: Prepared, hauls: Hauls): Finding {
  const limits = {
    cautious: liftGuideline('men', 'knuckle', 'arms extended'),
    middle: advisedKg,
    hopeful: liftGuideline('men', 'elbow', 'close to body'),
  }
  const state = stateOver(forEachOutlook((outlook) => hauls[outlook].carriedKg <= limits[outlook]))
  const { carriedKg } = hauls.middle
  const load = `Over the side it is ${words.with(carriedKg, 'kg')} with ${whatComesUp(input.pot.catchKg)}`
  const inArms = (lifter: Lifter) => words.bare(liftGuideline(lifter, 'knuckle', 'arms extended'), 'kg')
  const close = (lifter: Lifter) => words.with(liftGuideline(lifter, 'knuckle', 'close to body'), 'kg')
  const sentence = {
    fails: `${load}: two people, or a hauler.`,
    close: `${load}; advised are ${inArms('men')} at arm’s length to ${close('men')} close to the body for a man, ${inArms('women')} to ${close('women')} for a woman.`,
    holds:
      carriedKg <= liftGuideline('women', 'knuckle', 'arms extended')
        ? `${load}, within the advice for one person.`
        : `${load}, within the ${words.with(limits.cautious, 'kg')} advised for a man at arm’s length; for a woman it is ${inArms('women')}.`,
  }
  return {
    rule: 'lifts:person',
    state,
    part: 'body',
    what: sentence[state],
    actual: carriedKg,
    limit: limits.middle,
    margin: limits.middle - carriedKg,
    unit: 'kg',
    standing: 'advice',
    source: sources.person,
  }
}

/** Thin rope cuts into the hands. Advice; the haul still holds. */
function gripFinding({ input, words }: Prepared, { loads, byHauler }: Haul): Finding[] {
  const diameterMm = input.pot.rope?.diameterMm
  if (diameterMm === undefined || byHauler) return []
  const limit = comfortablePull(diameterMm)
  const pullN = Math.max(loads.comingUpN, loads.breakingOutN)
  if (pullN <= limit) return []
  return [
    {
      rule: 'lifts:grip',
      state: 'holds',
      part: 'rope',
      what: `By hand it pulls ${words.with(pullN, 'N')}: rope of ${words.nominal(diameterMm)} cuts into the hands. ${words.nominal(easyRopeMm)} is easier to hold.`,
      actual: pullN,
      limit,
      margin: limit - pullN,
      unit: 'N',
      standing: 'advice',
      source: sources.grip,
    },
  ]
}
