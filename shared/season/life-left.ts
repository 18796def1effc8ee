import type { PartName } from '@shared/schema/check'
import type { PartKind } from '@shared/schema/gear'
import type { PartReport } from './locker-lives'

/** Where a share of life stops counting as sound, so that the picture never contradicts the decision. */
const replaceBelow = 0.15
const watchBelow = 0.4

/**
 * Share of its life that a part has left, for the eye.
 *
 * s = remaining/(remaining + age), kept to the side of the decision on which the part stands.
 *
 * @param report a part and how it stands
 * @returns share, 0-1; undefined where nothing is known of how long it lasts
 */
export function lifeLeft({ life, use }: Pick<PartReport, 'life' | 'use'>): number | undefined {
  const months = life.remainingMonths?.mid
  const whole = months === undefined ? undefined : months + use.ageMonths
  const share = months === undefined || whole === undefined || !(whole > 0) ? undefined : months / whole
  if (life.decision === 'replace') return Math.min(share ?? replaceBelow, replaceBelow)
  if (life.decision === 'watch')
    return Math.min(Math.max(share ?? watchBelow, replaceBelow + 0.01), watchBelow)
  return share === undefined ? undefined : Math.max(share, watchBelow + 0.01)
}

/** The parts of the picture that show a kind of part. */
const shownAs: Record<PartKind, readonly PartName[]> = {
  rope: ['rope', 'bridle'],
  netting: ['netting', 'entrances'],
  'bait-bag': ['bait'],
  'bait-basket': ['bait'],
  chafe: ['chafe'],
  'release-cord': ['release'],
  frame: ['frame', 'base-ring', 'middle-ring', 'top-ring', 'strut', 'cross-bar'],
  float: ['float'],
  tag: ['marks'],
  ties: [],
  'door-hook': ['doors'],
}

/**
 * Life left of each part of the picture; of two parts of one kind the worse counts.
 *
 * @param reports the parts of one pot
 * @returns shares by part of the picture; what is not known is left out
 */
export function wearByPart(reports: readonly PartReport[]): Partial<Record<PartName, number>> {
  const wear: Partial<Record<PartName, number>> = {}
  for (const report of reports) {
    const left = lifeLeft(report)
    if (left === undefined) continue
    for (const name of shownAs[report.part.part.kind]) wear[name] = Math.min(left, wear[name] ?? 1)
  }
  return wear
}
