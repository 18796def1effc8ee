import type { MatchCell } from '@shared/match/match'
import { worstState, type VerdictState } from '@shared/schema/check'
import { reader } from '@renderer/ui/reader.svelte'
import { matchWords as w } from './words'

/** The question of a channel: does it stay put and show its float? Law and lifting stand beside it. */
export const channelState = ({ states }: MatchCell): VerdictState =>
  worstState([states.holdsBottom, states.floatShows])

/** Never rounded up to all of the time, nor down to none. */
export function sayPart(share: number | undefined): string | undefined {
  if (share === undefined || share === 0 || share === 1)
    return share === undefined ? share : `${share * 100} %`
  return `${Math.min(99, Math.max(1, Math.round(share * 100)))} %`
}

export function sayShare(share: number | undefined): string | undefined {
  const part = sayPart(share)
  return share === 0 ? w.never : part && w.ofTide(part)
}

export const sayMargin = ({ marginMps }: MatchCell) =>
  marginMps === undefined ? undefined : reader.sayMargin(marginMps, 'm/s')

// Beyond this no ring is a sensible answer.
const heaviestRingKg = 60

/** More mass in the base ring, where some is needed; that none would do, where it would be a burden of its own. */
export function sayRing({ ringMassNeededKg }: MatchCell): string | undefined {
  if (ringMassNeededKg === undefined || !(ringMassNeededKg > 0.005)) return undefined
  return ringMassNeededKg > heaviestRingKg ? w.noRingDoes : w.ringMore(reader.say(ringMassNeededKg, 'kg'))
}
