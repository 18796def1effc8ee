import type { Finding, Verdict } from '@shared/schema/check'

/**
 * The finding that decides a verdict: of those in the verdict's own state, the one with the least to spare. A verdict
 * that holds is known by its first question, as whether the pot slides; the others are beside it.
 */
export function headline(verdict: Verdict): Finding | undefined {
  const deciding = verdict.findings.filter((finding) => finding.state === verdict.state)
  if (verdict.state === 'holds') return deciding.find(({ margin }) => margin !== undefined) ?? deciding[0]
  return deciding.reduce<Finding | undefined>(
    (least, one) => (least === undefined || spare(one) < spare(least) ? one : least),
    undefined,
  )
}

/** Margin as a share of the limit, so that metres and kilograms can be told apart by size. */
function spare({ margin, limit }: Finding): number {
  if (margin === undefined) return Number.MAX_VALUE
  return typeof limit === 'number' && limit !== 0 ? margin / Math.abs(limit) : margin
}
