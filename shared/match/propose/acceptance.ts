import { verdictNames, type Check, type Finding, type Verdict, type VerdictName } from '@shared/schema/check'

/*
 * A proposal passes what can be told. No part can supply a rule that nobody found, or a name to write on a float:
 * such points stay open in the verdicts on law and on fishing and are listed with the proposal. In the others
 * nothing may be open.
 */
const mayStayOpen: readonly VerdictName[] = ['legal', 'fishes']

/** Whether one verdict passes, cautiously. */
export function passes(name: VerdictName, { findings, state }: Verdict): boolean {
  if (!mayStayOpen.includes(name)) return state === 'holds'
  return findings.every((finding) => finding.state === 'holds' || finding.state === 'cannot-tell')
}

/** Verdicts of a check that do not pass, waived ones aside. */
export function failing({ verdicts }: Check, waived: readonly VerdictName[]): VerdictName[] {
  return verdictNames.filter((name) => !waived.includes(name) && !passes(name, verdicts[name]))
}

/** The first finding that keeps a verdict from passing. */
export function obstacle({ verdicts }: Check, name: VerdictName): Finding | undefined {
  const { findings } = verdicts[name]
  return (
    findings.find(({ state }) => state === 'fails') ??
    findings.find(({ state }) => state === 'close') ??
    findings.find(({ state }) => state === 'cannot-tell')
  )
}

/** What cannot be told about a pot that passes, each once. */
export function openPoints(checks: readonly Check[]): string[] {
  const open = checks.flatMap(({ verdicts }) =>
    mayStayOpen.flatMap((name) =>
      verdicts[name].findings.filter(({ state }) => state === 'cannot-tell').map(({ what }) => what),
    ),
  )
  return [...new Set(open)]
}

// A finding that fails outweighs any number that are close, and those any number that cannot be told.
const weight = { fails: 10_000, close: 100, 'cannot-tell': 1, holds: 0 }

/** How far the verdicts on law, fishing and stowing are from passing; 0 is all of them held. */
export function tradeFaults({ verdicts }: Check): number {
  return [verdicts.legal, verdicts.fishes, verdicts.stows]
    .flatMap(({ findings }) => findings)
    .reduce((sum, { state }) => sum + weight[state], 0)
}
