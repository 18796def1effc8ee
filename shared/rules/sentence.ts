import type { Finding, Source, VerdictState } from '@shared/schema/check'
import type { Rule, RulePack } from '@shared/schema/rule-pack'
import type { Applies } from './applies'
import type { Outcome } from './outcome'

/**
 * The finding that a rule's outcome makes: state, sentence, figures, standing and source. A rule that there is
 * nothing to hold against makes none.
 */
export function findingOf(
  pack: RulePack,
  rule: Rule,
  scope: Exclude<Applies, 'no'>,
  outcome: Outcome,
): Finding | undefined {
  if (outcome.state === 'absent') return undefined
  const missing = missingFor(scope, outcome)
  const state = stateFor(rule, outcome, missing)
  const base = {
    rule: rule.id,
    state,
    part: rule.part ?? outcome.part,
    what: [says(rule), detail(outcome, missing), howSure(rule, outcome)]
      .filter((text) => text !== '')
      .join(' '),
    standing: rule.standing,
    source: sourceOf(pack, rule),
  }
  if (outcome.state === 'unknown') return { ...base, missing: joined(missing) }
  return {
    ...base,
    ...(outcome.actual === undefined ? {} : { actual: outcome.actual }),
    ...(outcome.limit === undefined ? {} : { limit: outcome.limit }),
    ...(outcome.margin === undefined ? {} : { margin: outcome.margin }),
    ...(outcome.unit === undefined || outcome.unit === '' ? {} : { unit: outcome.unit }),
    ...(state === 'cannot-tell' ? { missing: joined(missing) } : {}),
  }
}

/** A rule that may not apply is met where its check holds; where it fails, what would decide it is missing. */
function missingFor(
  scope: Exclude<Applies, 'no'>,
  outcome: Exclude<Outcome, { state: 'absent' }>,
): readonly string[] {
  const scopeMissing = scope === 'yes' || outcome.state === 'holds' ? [] : scope.missing
  return [...new Set([...scopeMissing, ...(outcome.state === 'unknown' ? outcome.missing : [])])]
}

function stateFor(rule: Rule, outcome: Outcome, missing: readonly string[]): VerdictState {
  if (outcome.state === 'holds') return 'holds'
  const worst = missing.length > 0 ? 'cannot-tell' : 'fails'
  // Advice and proposals bind nobody: the worst they say is that something is worth a look.
  return rule.standing === 'law' ? worst : 'close'
}

const prefix = { law: '', advice: 'Advice, not law: ', proposal: 'Proposed, not known to be in force: ' }

function says(rule: Rule): string {
  const lead = prefix[rule.standing]
  return lead === '' ? rule.says : `${lead}${rule.says.charAt(0).toLowerCase()}${rule.says.slice(1)}`
}

function detail(outcome: Exclude<Outcome, { state: 'absent' }>, missing: readonly string[]): string {
  if (outcome.state === 'unknown') return outcome.says ?? withoutKnowing(missing)
  return missing.length === 0
    ? outcome.says
    : `${withoutKnowing(missing)} Where it applies: ${outcome.says}`.trim()
}

const withoutKnowing = (missing: readonly string[]) => `Cannot tell without knowing ${joined(missing)}.`

function howSure(rule: Rule, outcome: Outcome): string {
  if (rule.user) return `Your own value of ${rule.user.date}.`
  if (rule.confidence === 'memory') return 'Recalled, not read in a source.'
  return rule.confidence === 'conflicting' && outcome.state !== 'unknown' ? 'Sources disagree.' : ''
}

function sourceOf(pack: RulePack, rule: Rule): Source {
  const source = pack.sources[rule.sources[0] ?? 0]
  if (!source) throw new Error(`${rule.id} names a source that its pack does not list`)
  return {
    title: source.title,
    ...(source.publisher === undefined ? {} : { publisher: source.publisher }),
    ...(source.date === undefined ? {} : { date: source.date }),
    ...(source.url === undefined ? {} : { url: source.url }),
    checkedOn: rule.user?.date ?? pack.checkedOn,
    confidence: rule.user || pack.own ? 'user' : rule.confidence,
  }
}

/** "the date, the zone and the float" */
export function joined(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`
}
