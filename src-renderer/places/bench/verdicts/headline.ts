import type { Finding, Verdict } from '@shared/schema/check'

/** What a verdict is known by: the finding that decides it, and its margin if it has one. */
export interface Headline {
  readonly finding: Finding | undefined
  readonly margin: number | undefined
  readonly unit: string
}

/** The finding that decides a verdict: of those in the verdict's own state, the one with the least to spare. */
export function headline(verdict: Verdict): Headline {
  const deciding = verdict.findings.filter((finding) => finding.state === verdict.state)
  const finding = deciding.reduce<Finding | undefined>(
    (least, one) => (least === undefined || spare(one) < spare(least) ? one : least),
    undefined,
  )
  return { finding, margin: finding?.margin, unit: finding?.unit ?? '' }
}

/** Margin as a share of the limit, so that metres and kilograms can be told apart by size. */
function spare({ margin, limit }: Finding): number {
  if (margin === undefined) return Number.MAX_VALUE
  return typeof limit === 'number' && limit !== 0 ? margin / Math.abs(limit) : margin
}
