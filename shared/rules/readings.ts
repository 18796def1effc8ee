import type { Rule } from '@shared/schema/rule-pack'
import { evaluate } from './evaluate'
import type { Facts } from './facts'
import type { Outcome } from './outcome'

type Sides = NonNullable<Rule['readings']>

/**
 * A rule on which sources disagree. Where every side comes to the same for this gear the disagreement does not
 * matter; else it cannot be told, and both sides are named. A side without a check says that there is no such rule.
 */
export function readingsOutcome(sides: Sides, facts: Facts): Outcome {
  const outcomes = sides.map((side) => (side.check ? evaluate(side.check, facts) : noRule))
  const [first] = outcomes
  if (!first) return { state: 'absent', part: 'body' }
  const states = new Set(outcomes.map((outcome) => (outcome.state === 'absent' ? 'holds' : outcome.state)))
  const part = outcomes.find((outcome) => outcome !== noRule)?.part ?? first.part
  if (states.has('unknown'))
    return {
      state: 'unknown',
      missing: [...new Set(outcomes.flatMap((one) => (one.state === 'unknown' ? one.missing : [])))],
      part,
    }
  if (states.size > 1)
    return {
      state: 'unknown',
      missing: ['which of the sources is right'],
      part,
      says: `Sources disagree: ${sides.map((side) => side.says).join('; ')}. Look it up.`,
    }
  return outcomes.find((outcome) => outcome !== noRule && outcome.state !== 'absent') ?? first
}

const noRule: Outcome = { state: 'absent', part: 'body' }
