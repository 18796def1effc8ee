import type { Check, Finding, Verdict } from '@shared/schema/check'
import { verdictNames } from '@shared/schema/check'
import { formatMargin } from '@shared/units/display'
import type { ReaderLocale } from '@shared/units/locale'
import { sayState, verdictWords } from '@shared/verdicts/verdict-words'

/** A check as text for a person: a line a verdict, and under it each finding that does not simply hold. */
export function checkText(potName: string, check: Check, locale: ReaderLocale): string {
  const verdicts = verdictNames.flatMap((name) =>
    verdictLines(verdictWords[name].name, check.verdicts[name], locale),
  )
  return [`${potName}: ${sayState(check.overall)}`, '', ...verdicts, '', caution, ''].join('\n')
}

const caution =
  'Local rules and licensed practice decide. What holds and shows is an estimate with its spread, not a promise.'

function verdictLines(name: string, { state, findings }: Verdict, locale: ReaderLocale): string[] {
  const open = findings.filter((finding) => finding.state !== 'holds')
  return [
    `${name.padEnd(14)}${sayState(state)}`,
    ...open.map((finding) => `  - ${findingLine(finding, locale)}`),
  ]
}

function findingLine(finding: Finding, locale: ReaderLocale): string {
  const { what, margin, unit, standing, source, rule } = finding
  const by =
    margin === undefined || unit === undefined
      ? ''
      : ` (margin ${formatMargin(margin, unit, locale, standing === 'law' ? 3 : 2)})`
  const from = source ? [source.title, source.date].filter(Boolean).join(', ') : ''
  const where = [rule, standing, from].filter(Boolean).join('; ')
  return `${what}${by} [${where}]`
}
