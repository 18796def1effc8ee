import type { Outlook } from '@shared/physics/coefficients'
import { netBuoyancy } from '@shared/physics/float/float'
import { standing } from '@shared/physics/holding/standing-pot'
import { solveLine } from '@shared/physics/line/line'
import type { Pot } from '@shared/schema/pot'
import type { Bottom } from '@shared/schema/water'
import type { CheckInput } from './check-input'
import { checkPot } from './check-pot'
import { depthsOver } from './depths'
import { worstDepth } from './holds-bottom'
import { lifts } from './lifts'
import { lineIn, prepare, standingIn, type Prepared } from './prepared'
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
import { nominal, wordsIn, type Words } from './words'

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
  /** True where the verdict would hold. */
  readonly enough: boolean
  /** Load taken off the pot or the float, or strength gained [N]; positive is better. */
  readonly gainN: number
  /** "A base ring of 10 mm bar instead of 8 mm holds." */
  readonly what: string
}

/** How one verdict is measured for a variant: loads with what they leave to spare, 1 and more holds. */
interface Measure {
  readonly factor: number
  readonly loadN: number
}

/**
 * Single changes that would help a verdict that does not hold, each found by solving the changed pot: of every kind
 * the smallest that is enough, else the one that helps most. Enough ones first, then by what they take off.
 *
 * A thinner rope counts only while it is strong enough for the haul.
 *
 * @param input what `checkPot` takes
 * @returns changes for holds bottom, float shows and lifts, the best of each first; empty where all hold or cannot be
 *   told
 * @source the same models as the verdicts
 */
export function singleChanges(input: CheckInput): SingleChange[] {
  const { holdsBottom, floatShows, lifts: lifting } = checkPot(input).verdicts
  const changes: SingleChange[] = []
  // Close holds with the middle outlook already: then the cautious one is the goal.
  const goal = (state: string): Outlook | undefined =>
    state === 'fails' ? 'middle' : state === 'close' ? 'cautious' : undefined
  const bottom = goal(holdsBottom.state)
  if (bottom)
    changes.push(
      ...rank(input, 'holdsBottom', bottom, holdMeasure(bottom), [
        thickerRing,
        thinnerRope,
        longerRope,
        moreBallast,
        coarserMesh,
      ]),
    )
  const float = goal(floatShows.state)
  if (float)
    changes.push(
      ...rank(input, 'floatShows', float, floatMeasure(float), [largerFloat, longerRope, thinnerRope]),
    )
  const lift = lifting.findings.find((finding) => finding.rule === 'lifts:rope')
  const rope = lift && goal(lift.state)
  if (rope) changes.push(...rank(input, 'lifts', rope, liftMeasure(rope), [thickerRope]))
  return changes
}

/** The one change that helps most, or undefined where nothing fails or nothing helps. */
export function bestSingleChange(input: CheckInput): SingleChange | undefined {
  return singleChanges(input)[0]
}

type Measuring = (prepared: Prepared) => Measure | undefined

function rank(
  input: CheckInput,
  verdict: SingleChange['verdict'],
  goal: Outlook,
  measure: Measuring,
  families: readonly ((pot: Pot) => ChangeFamily)[],
): SingleChange[] {
  const before = measure(prepare(input))
  if (!before) return []
  const words = wordsIn(input.units ?? 'metric')
  const found: SingleChange[] = []
  for (const family of families) {
    const change = bestOf(input, verdict, goal, measure, before, family(input.pot), words)
    if (change) found.push(change)
  }
  // A stable sort keeps the order of the families among those that are enough.
  return found.sort((a, b) => Number(b.enough) - Number(a.enough) || (a.enough ? 0 : b.gainN - a.gainN))
}

function bestOf(
  input: CheckInput,
  verdict: SingleChange['verdict'],
  goal: Outlook,
  measure: Measuring,
  before: Measure,
  family: ChangeFamily,
  words: Words,
): SingleChange | undefined {
  let best: { variant: Variant; after: Measure } | undefined
  for (const variant of family.variants) {
    const prepared = prepare({ ...input, pot: variant.pot })
    const after = measure(prepared)
    if (!after || after.factor <= before.factor * 1.005) continue
    if (family.name === 'thinner-rope' && !isStrongEnough(prepared)) break
    if (!best || after.factor > best.after.factor) best = { variant, after }
    if (after.factor >= 1) break
  }
  if (!best) return undefined
  const { variant, after } = best
  const enough = after.factor >= 1
  const gainN = verdict === 'lifts' ? after.loadN - before.loadN : before.loadN - after.loadN
  return {
    verdict,
    path: variant.path,
    from: variant.from,
    to: variant.to,
    unit: variant.unit,
    pot: variant.pot,
    enough,
    gainN,
    what: `${subject(family.name, variant, words)} ${effect(verdict, goal, enough, { before, after, gainN }, words)}`,
  }
}

const isStrongEnough = (prepared: Prepared) =>
  lifts(prepared).findings.every((finding) => finding.rule !== 'lifts:rope' || finding.state !== 'fails')

function subject(name: ChangeFamily['name'], { from, to }: Variant, words: Words): string {
  const size = `${nominal(words, to)} instead of ${nominal(words, from)}`
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
  verdict: SingleChange['verdict'],
  goal: Outlook,
  enough: boolean,
  change: { before: Measure; after: Measure; gainN: number },
  words: Words,
): string {
  const does = { holdsBottom: 'holds', floatShows: 'keeps the float up', lifts: 'is strong enough' }[verdict]
  if (enough) return goal === 'cautious' ? `${does}, even by the cautious figures.` : `${does}.`
  if (verdict === 'holdsBottom' && change.gainN <= 0)
    return `helps, but not enough: ${words.bare(change.after.factor, '1')} of what is needed instead of ${words.bare(change.before.factor, '1')}.`
  const gain = words.with(Math.abs(change.gainN), 'N')
  return verdict === 'lifts'
    ? `bears ${gain} more, which is not enough.`
    : `takes ${gain} off, which is not enough.`
}

const holdMeasure =
  (goal: Outlook): Measuring =>
  (prepared) => {
    const bottom: Bottom | undefined = prepared.conditions?.bottom
    if (!prepared.conditions || !bottom || prepared.mass.missing.length > 0) return undefined
    const depthM = worstDepth(prepared, prepared.conditions, bottom)
    if (depthM === undefined) return undefined
    const { surfaceCurrentMps } = prepared.conditions
    const solved = standing(standingIn(prepared, goal, depthM, surfaceCurrentMps, bottom), 'rough')
    return {
      factor: Math.min(solved.slideFactor, solved.tipFactor),
      loadN: solved.drag.dragN + solved.hold.ropeHorizontalN,
    }
  }

const floatMeasure =
  (goal: Outlook): Measuring =>
  (prepared) => {
    const { conditions, sets } = prepared
    const depths = conditions && depthsOver(prepared, conditions)
    if (!conditions || !depths) return undefined
    const problem = lineIn(prepared, sets[goal], depths.highM, conditions.surfaceCurrentMps)
    const line = problem && solveLine(problem, 'rough')
    if (!problem || !line || line.state === 'failed') return undefined
    const buoyancyN = netBuoyancy(problem.float, problem.waterDensity)
    // Under water the rope asks for more than all of it; how much more shows in how deep it is drawn.
    const dipped = line.state === 'under' ? 1 + line.dipM / Math.max(depths.highM, 0.1) : 1
    return {
      factor: buoyancyN / Math.max(line.verticalN * sets[goal].floatReserve * dipped, 1e-6),
      loadN: line.verticalN * dipped,
    }
  }

const liftMeasure =
  (goal: Outlook): Measuring =>
  (prepared) => {
    const rope = lifts(prepared).findings.find((finding) => finding.rule === 'lifts:rope')
    if (typeof rope?.limit !== 'number' || typeof rope.actual !== 'number') return undefined
    const enough = rope.state === 'holds' || (rope.state === 'close' && goal === 'middle')
    const factor = rope.limit / rope.actual
    return { factor: enough ? Math.max(1, factor) : Math.min(factor, 0.99), loadN: rope.limit }
  }
