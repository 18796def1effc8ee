import { worstState, type Finding, type Verdict, type VerdictState } from '@shared/schema/check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import { applies, type Applies } from './applies'
import { evaluate } from './evaluate'
import { factsOf, type Facts, type LegalCase } from './facts'
import { notFoundFinding } from './not-found'
import { nearest, relativeMargin, type Outcome } from './outcome'
import { readingsOutcome } from './readings'
import { findingOf } from './sentence'

/**
 * Holds a design and a trip against a region's rules.
 *
 * Findings come worst first: state, law before advice, then the narrowest margin. The verdict answers for the rules
 * that were found. Subjects on which none was found make one finding that cannot be told; they decide the verdict
 * only where the pack says that nothing is legal without them.
 *
 * @param pack  the region's rules
 * @param legal the design; the trip and the water where they are known; today
 * @returns the legal verdict, with how many rules were checked, are to be read, and were not found
 */
export function judge(pack: RulePack, legal: LegalCase): Verdict {
  const facts = factsOf(legal)
  const { findings, toRead } = findingsOf(pack, facts)
  const unfound = notFoundFinding(pack, facts)
  const state = worstState([
    ...findings.map((finding) => finding.state),
    ...(unfound?.decides ? ['cannot-tell' as const] : []),
  ])
  return {
    state,
    findings: ordered(unfound ? [...findings, unfound.finding] : findings),
    figures: { checked: findings.length, toRead: toRead.length, notFound: unfound?.count ?? 0 },
  }
}

/**
 * Rules of a region that apply, or may apply, to a design and that a person has to read: a program cannot check
 * them, or the trip does not say what it would take.
 */
export function rulesToRead(pack: RulePack, legal: LegalCase): Rule[] {
  return findingsOf(pack, factsOf(legal)).toRead
}

interface Judged {
  readonly rule: Rule
  readonly scope: Exclude<Applies, 'no'>
  readonly outcome: Outcome | 'to-read'
}

function findingsOf(pack: RulePack, facts: Facts): { findings: Finding[]; toRead: Rule[] } {
  const judged = pack.rules.flatMap((rule): Judged[] => {
    const scope = applies(rule, pack, facts)
    return scope === 'no' ? [] : [{ rule, scope, outcome: outcomeOf(rule, scope, facts) }]
  })
  const findings = decided(judged).flatMap((one) => {
    if (one.outcome === 'to-read') return []
    const finding = findingOf(pack, one.rule, one.scope, one.outcome)
    return finding ? [finding] : []
  })
  return { findings, toRead: judged.filter((one) => one.outcome === 'to-read').map((one) => one.rule) }
}

function outcomeOf(rule: Rule, scope: Exclude<Applies, 'no'>, facts: Facts): Outcome | 'to-read' {
  if (rule.shown !== undefined) return 'to-read'
  const outcome = rule.check ? evaluate(rule.check, facts) : readingsOutcome(rule.readings ?? [], facts)
  const isUnstated = outcome.state === 'unknown' || (scope !== 'yes' && outcome.state !== 'holds')
  return rule.onlyIfStated && isUnstated ? 'to-read' : outcome
}

/** Alternatives of one group speak with one voice: the one that is met, else what is not known, else the first. */
function decided(judged: readonly Judged[]): readonly Judged[] {
  return judged.flatMap((one, index) => {
    const { group } = one.rule
    if (group === undefined) return [one]
    const isFirst = judged.findIndex((other) => other.rule.group === group) === index
    return isFirst
      ? [
          spokesman(
            judged.filter((other) => other.rule.group === group),
            one,
          ),
        ]
      : []
  })
}

function spokesman(group: readonly Judged[], first: Judged): Judged {
  const met = group.find((one) => one.scope === 'yes' && stateOf(one) === 'holds')
  return (
    met ?? toReadAsUnknown(group) ?? group.find((one) => stateOf(one) === 'unknown') ?? missed(group) ?? first
  )
}

/** None of the alternatives is met: the nearest miss says so for all. */
function missed(group: readonly Judged[]): Judged | undefined {
  const failures = group.flatMap((one) =>
    one.outcome !== 'to-read' && one.outcome.state === 'fails' ? [{ ...one, outcome: one.outcome }] : [],
  )
  const spoken = nearest(failures.map((one) => one.outcome))
  const miss = failures.find((one) => one.outcome === spoken)
  if (!miss || failures.length < 2) return miss
  const says = `${miss.outcome.says} No other way allowed is met.`.trim()
  return { ...miss, outcome: { ...miss.outcome, says } }
}

const stateOf = ({ outcome }: Judged) => (outcome === 'to-read' ? outcome : outcome.state)

/** A way that only a person can check may be the one that is met, so the group cannot be told. */
function toReadAsUnknown(group: readonly Judged[]): Judged | undefined {
  const shown = group.find((one) => one.outcome === 'to-read')
  if (!shown) return undefined
  return {
    ...shown,
    outcome: {
      state: 'unknown',
      missing: ['whether the gear meets it this way'],
      part: shown.rule.part ?? 'body',
    },
  }
}

const rank: Record<VerdictState, number> = { fails: 0, 'cannot-tell': 1, close: 2, holds: 3 }

function ordered(findings: readonly Finding[]): Finding[] {
  return findings.toSorted(
    (a, b) =>
      rank[a.state] - rank[b.state] ||
      Number(a.standing !== 'law') - Number(b.standing !== 'law') ||
      relativeMargin(a) - relativeMargin(b),
  )
}
