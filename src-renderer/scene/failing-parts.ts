import { verdictNames, type Check, type PartName } from '@shared/schema/check'

/** Parts with a finding that fails, in the order of the verdicts, each once. */
export function failingParts(check: Check | undefined): PartName[] {
  if (!check) return []
  const parts = verdictNames.flatMap((name) =>
    check.verdicts[name].findings.flatMap(({ state, part }) => (state === 'fails' && part ? [part] : [])),
  )
  return [...new Set(parts)]
}
