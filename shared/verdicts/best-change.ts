import { reweighed } from '@shared/design/reweighed'
import type { Outlook } from '@shared/physics/coefficients'
import type { Pot } from '@shared/schema/pot'
import { worstState, type Verdict } from '@shared/schema/check'
import type { CheckInput } from './check-input'
import { checkPot } from './check-pot'
import { floatMeasure, holdMeasure, liftMeasure, type Measure, type Measuring } from './change-measures'
import { haulOf } from './haul'
import { lifts } from './lifts'
import { prepare, type Prepared } from './prepared'
import {
  coarserMesh,
  largerFloat,
  longerRope,
  moreBallast,
  thickerRing,
  thickerRope,
  thinnerRope,
  type ChangeFamily,
  type Variant,
} from './single-changes'
import type { Words } from './words'

/** One change to a design, with what it would do. */
export interface SingleChange {
  readonly verdict: 'holdsBottom' | 'floatShows' | 'lifts'
  /** Field to change, and from what to what. */
  readonly path: string
  readonly from: number
  readonly to: number
  readonly unit: Variant['unit']
  /** The changed design, ready to take over. */
  readonly pot: Pot
  /** What holds over what is asked, once changed. */
  readonly factor: number
  /** True where the factor is 1 or more. */
  readonly enough: boolean
  /** Load taken off the pot or the float, or strength gained [N]; positive is better. */
  readonly gainN: number
  /** "A base ring of 10 mm bar instead of 8 mm holds." */
  readonly what: string
}

/**
 * Single changes that would help a verdict that does not hold, each found by solving the changed pot: of every kind
 * the smallest that is enough, else the one that helps most. Enough ones first, then by how near they come.
 *
 * A thinner rope counts only while it is strong enough for the haul, a larger float only while it does not lift the pot,
 * and a change that brings less than a quarter of what is wanting is left out.
 *
 * @param input what `checkPot` takes
 * @returns changes for holds bottom, float shows and lifts, the best of each first; empty where all hold or cannot be
 *   told
 * @source the same models as the verdicts
 */
export function singleChanges(input: CheckInput): SingleChange[] {
  const { verdicts } = checkPot(input)
  const bottom = goalOf(verdicts.holdsBottom, ['bottom:slides', 'bottom:tips'])
  const float = goalOf(verdicts.floatShows, ['float:shows', 'float:rope-length'])
  const rope = goalOf(verdicts.lifts, ['lifts:rope'])
  const holding = [thickerRing, thinnerRope, longerRope, moreBallast, coarserMesh]
  return [
    ...(bottom
      ? rank(input, { verdict: 'holdsBottom', goal: bottom, measure: holdMeasure(bottom) }, holding)
      : []),
    ...(float
      ? rank(input, { verdict: 'floatShows', goal: float, measure: floatMeasure(float) }, [
          largerFloat,
          longerRope,
          thinnerRope,
        ])
      : []),
    ...(rope ? rank(input, { verdict: 'lifts', goal: rope, measure: liftMeasure(rope) }, [thickerRope]) : []),
  ]
}

/** With which outlook it is to hold: close holds with the middle one already; undefined where it holds. */
function goalOf({ findings }: Verdict, rules: readonly string[]): Goal['goal'] | undefined {
  const state = worstState(
    findings.filter(({ rule }) => rules.includes(rule)).map((finding) => finding.state),
  )
  return state === 'fails' ? 'middle' : state === 'close' ? 'cautious' : undefined
}

/** The one change that helps most, or undefined where nothing fails or nothing helps. */
export function bestSingleChange(input: CheckInput): SingleChange | undefined {
  return singleChanges(input)[0]
}

/** What a change is to bring about. */
interface Goal {
  readonly verdict: SingleChange['verdict']
  readonly goal: Exclude<Outlook, 'hopeful'>
  readonly measure: Measuring
}

function rank(
  input: CheckInput,
  goal: Goal,
  families: readonly ((pot: Pot) => ChangeFamily)[],
): SingleChange[] {
  const before = goal.measure(prepare(input))
  if (!before) return []
  const found = families.flatMap((family) => bestOf(input, goal, before, family(input.pot)) ?? [])
  // A stable sort keeps the order of the families among those that are enough.
  return found.sort((a, b) => Number(b.enough) - Number(a.enough) || (a.enough ? 0 : b.factor - a.factor))
}

// Less than this share of what is wanting is not worth telling.
const leastHelp = 0.25

function bestOf(
  input: CheckInput,
  goal: Goal,
  before: Measure,
  family: ChangeFamily,
): SingleChange | undefined {
  const least = Math.min(1, before.factor + leastHelp * (1 - before.factor))
  let best: { variant: Variant; prepared: Prepared; after: Measure } | undefined
  for (const variant of family.variants) {
    const pot = reweighed(input.pot, variant.pot, input.materials)
    const prepared = prepare({ ...input, pot })
    if (family.name === 'thinner-rope' && !isStrongEnough(prepared)) break
    if (family.name === 'float' && liftsPot(input, prepared, goal.goal)) break
    const after = goal.measure(prepared)
    if (!after || after.factor < least) continue
    if (!best || after.factor > best.after.factor) best = { variant, prepared, after }
    if (after.factor >= 1) break
  }
  if (!best) return undefined
  const { variant, prepared, after } = best
  const { words } = prepared
  const enough = after.factor >= 1
  const gainN = goal.verdict === 'lifts' ? after.loadN - before.loadN : before.loadN - after.loadN
  return {
    verdict: goal.verdict,
    path: variant.path,
    from: variant.from,
    to: variant.to,
    unit: variant.unit,
    pot: prepared.input.pot,
    factor: after.factor,
    enough,
    gainN,
    what: `${subject(family.name, variant, words)} ${effect(goal, enough, { after, gainN }, words)}${price(input, prepared)}`,
  }
}

/** Whether a changed float moves a pot that held, or lifts it off the bottom. */
function liftsPot(input: CheckInput, changed: Prepared, goal: Outlook): boolean {
  const hold = holdMeasure(goal)
  const [before, after] = [hold(prepare(input)), hold(changed)]
  if (!before || !after) return false
  return after.factor === 0 || (before.factor >= 1 && after.factor < 1)
}

/** What a heavier pot costs: one person no longer hauls it. */
function price(input: CheckInput, changed: Prepared): string {
  const byHauler = (prepared: Prepared) => haulOf(prepared, 'middle').byHauler
  return byHauler(changed) && !byHauler(prepare(input)) ? ' It then takes two people, or a hauler.' : ''
}

const isStrongEnough = (prepared: Prepared) =>
  lifts(prepared).findings.every((finding) => finding.rule !== 'lifts:rope' || finding.state !== 'fails')

function subject(name: ChangeFamily['name'], { from, to }: Variant, words: Words): string {
  const size = `${words.nominal(to)} instead of ${words.nominal(from)}`
  switch (name) {
    case 'ring':
      return `A base ring of ${size} bar`
    case 'ballast':
      return `${words.with(to - from, 'kg')} more lead on the base`
    case 'thinner-rope':
    case 'thicker-rope':
      return `Rope of ${size}`
    case 'longer-rope':
      return `${words.with(to - from, 'm')} more rope`
    case 'float':
      return `A float of ${size}`
    case 'mesh':
      return `Netting with a bar of ${size}`
  }
}

function effect(
  { verdict, goal }: Goal,
  enough: boolean,
  { after, gainN }: { after: Measure; gainN: number },
  words: Words,
): string {
  const does = { holdsBottom: 'holds', floatShows: 'keeps the float up', lifts: 'is strong enough' }[verdict]
  if (enough) return goal === 'cautious' ? `${does}, even by the cautious figures.` : `${does}.`
  // What is taken off a float that is under says little: it gives all it has.
  if (gainN <= 0 || verdict === 'floatShows')
    return `helps, but reaches only ${Math.floor(100 * after.factor)} % of what is needed.`
  const gain = words.with(gainN, 'N')
  return verdict === 'lifts'
    ? `bears ${gain} more, which is not enough.`
    : `takes ${gain} off, which is not enough.`
}
