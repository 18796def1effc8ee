import { significant } from '@shared/units/display'
import type { WearAssumptions } from './assumptions'
import { strengthAfter } from './damage'
import type { Decision, LifeContext, PartLife } from './judgement'
import { nettingThresholds } from './mesh-damage'
import { damageOf, perMonthOfUse, type Inspection, type PartUse } from './part-use'
import { requiredShareUnknown, retireDiameterLossPct, ropeGradeLooks, type RopeGrade } from './rope'
import {
  probabilityBelow,
  remainingMonths,
  strengthAt,
  updateStrength,
  type StrengthBelief,
} from './strength-belief'
import { chanceSaid } from './wording'

/**
 * How rope or fibre netting stands: damage from use, corrected by each inspection in turn.
 *
 * Damage after an inspection lowers the median and widens the spread by its share of all damage.
 *
 * @param part    what it went through and what inspections found
 * @param context figures, the share of strength it must keep, the months to last
 * @returns the judgement
 * @source damage sum and normal updating on ln S; thresholds are assumptions
 */
export function strengthLife(part: PartUse, context: LifeContext): PartLife {
  const { sheet } = context
  const belief = believedStrength(part, sheet)
  const floor =
    part.kind === 'netting' ? nettingThresholds.replace : (context.requiredShare ?? requiredShareUnknown)
  const weak = probabilityBelow(belief, floor)
  const perMonth = ratePerMonth(part, sheet)
  const later: StrengthBelief = {
    ...belief,
    median: belief.median * strengthAfter(perMonth * context.aheadMonths),
  }
  const verdict = sightVerdict(part, context) ?? chanceVerdict(weak, floor, part, context)
  return {
    ...verdict,
    ...(perMonth > 0 ? { remainingMonths: remainingMonths(belief, floor, perMonth) } : {}),
    strengthLeft: {
      low: strengthAt(belief, 0.1),
      mid: belief.median,
      high: Math.min(1, strengthAt(belief, 0.9)),
    },
    failureChance: probabilityBelow(later, floor),
    inspected: part.inspections.length > 0,
  }
}

/** Belief on the strength left now, from use and inspections in turn. */
export function believedStrength(part: PartUse, sheet: WearAssumptions): StrengthBelief {
  const start: { belief: StrengthBelief; damage: number } = {
    belief: { median: 1, logSd: sheet.strengthLogSd.value },
    damage: 0,
  }
  const inspected = part.inspections.reduce((state, inspection) => {
    const damage = damageOf(part, inspection.at, sheet)
    const before = aged(state, damage, sheet)
    const found = strengthFound(inspection)
    return { belief: found ? updateStrength(before, found) : before, damage }
  }, start)
  return aged(inspected, damageOf(part, part.now, sheet), sheet)
}

/** Belief after more damage: weaker, and less sure by the share of the damage that is new. */
function aged(
  state: { belief: StrengthBelief; damage: number },
  damage: number,
  sheet: WearAssumptions,
): StrengthBelief {
  const more = Math.max(0, damage - state.damage)
  const median = state.belief.median * strengthAfter(more)
  if (state.damage === 0) return { median, logSd: state.belief.logSd }
  return { median, logSd: Math.hypot(state.belief.logSd, (sheet.strengthLogSd.value * more) / damage) }
}

/** What an inspection says of the strength; a part to be discarded is at best as the grade before. */
function strengthFound(inspection: Inspection): StrengthBelief | undefined {
  const grade = gradeFound(inspection)
  return grade === undefined ? undefined : ropeGradeLooks[grade === 4 ? 3 : grade].strength
}

/** The grade seen, made worse where the measured loss of diameter asks it. */
export function gradeFound({ grade, diameterLossPct }: Inspection): RopeGrade | undefined {
  if (diameterLossPct === undefined) return grade
  const measured: RopeGrade = diameterLossPct > retireDiameterLossPct ? 4 : diameterLossPct >= 3 ? 3 : 0
  return grade === undefined && measured === 0 ? undefined : (Math.max(grade ?? 0, measured) as RopeGrade)
}

/** Halvings a month, from all its use so far. */
function ratePerMonth(part: PartUse, sheet: WearAssumptions): number {
  return perMonthOfUse(damageOf(part, part.now, sheet), part.now.ageMonths)
}

type Said = Pick<PartLife, 'decision' | 'reason'>

/** What was seen decides before any estimate. */
function sightVerdict(part: PartUse, context: LifeContext): Said | undefined {
  const last = part.inspections.at(-1)
  if (!last) return undefined
  if (part.kind === 'rope' && gradeFound(last) === 4) {
    const { diameterLossPct: lost } = last
    return {
      decision: 'replace',
      reason:
        lost !== undefined && lost > retireDiameterLossPct
          ? `The rope has lost ${significant(lost, context.decimalMark ?? '.')} % of its diameter; ${retireDiameterLossPct} % is the most.`
          : 'The last inspection found a reason to discard it.',
    }
  }
  if (last.grade === 4)
    return { decision: 'replace', reason: 'The last inspection found a reason to discard it.' }
  const broken = last.brokenBars ?? 0
  const mendAt = context.mendAt?.bars ?? usualMendBars
  if (broken >= mendAt) {
    const getsOut = context.mendAt
      ? `a legal ${context.mendAt.crab.toLowerCase()} gets out through ${context.mendAt.letOutAt}`
      : `a crab gets out soon after ${mendAt}`
    return { decision: 'replace', reason: `${inARow(broken)}. Mend or replace: ${getsOut}.` }
  }
  if (broken > 0)
    return {
      decision: 'watch',
      reason: `${inARow(broken)}. Mend before it grows.`,
    }
  return undefined
}

const inARow = (broken: number) => (broken === 1 ? '1 broken bar' : `${broken} broken bars in a row`)

/** Two of the three bars through which a legal mud crab leaves 28 mm mesh; used where crab or mesh is not known. */
const usualMendBars = 2

function chanceVerdict(weak: number, floor: number, part: PartUse, context: LifeContext): Said {
  const { sheet } = context
  const decision: Decision =
    weak > sheet.replaceChance.value ? 'replace' : weak >= sheet.watchChance.value ? 'watch' : 'fine'
  const basis = part.inspections.length === 0 ? ' Never inspected: this is from use alone.' : ''
  const percent = Math.round(floor * 100)
  if (part.kind === 'rope' && floor >= 1)
    return { decision, reason: 'Even new it is too weak for the haul of this design: put in a thicker one.' }
  const asked =
    part.kind === 'rope' && context.requiredShare !== undefined ? ', which the haul asks for,' : ''
  return {
    decision,
    reason: `Chance that under ${percent} % of its strength${asked} is left: ${chanceSaid(weak)}.${basis}`,
  }
}
