import type { FishingAssumptions } from './assumptions'
import { floatClearance, overlapShare, scentReach } from './spacing'

/** Past this no scent can be counted on [m]. */
const farthestScentM = 100

export interface NeighbourInput {
  /** Distance between neighbouring pots [m], > 0. */
  readonly spacingM: number
  /** How far the float stands off the pot in the strongest current [m]; left out where it is not known. */
  readonly swingM?: number | undefined
  /** Current that carries the scent [m/s]; left out where it is not known. */
  readonly currentMps?: number | undefined
  readonly soakH?: number | undefined
}

/** What two neighbouring pots do to each other. */
export interface Neighbours {
  /** Clear water between the floats at the worst [m]; negative where they can meet. */
  readonly floatsApartM?: number
  /** How far down-current a pot draws crabs within the soak [m]. */
  readonly reachM?: number
  /** Share of the ground drawn from that two pots share, 0-1. */
  readonly shared?: number
  /** Spacing at which pots were found not to compete [m]. */
  readonly enoughM: number
}

/**
 * Whether neighbouring pots' floats can meet and how much ground they share.
 *
 * Reach after `scentReach`, at most 100 m; floats swing both ways as the tide turns, so each may stand towards the
 * other.
 *
 * @param input spacing, swing, current and soak
 * @param sheet walking speed and spacing
 * @returns distances and the share; what cannot be told is left out
 * @source as `floatClearance`, `scentReach` and `overlapShare`
 */
export function neighbours(input: NeighbourInput, sheet: FishingAssumptions): Neighbours {
  const { spacingM, swingM, currentMps, soakH } = input
  const reachM =
    currentMps !== undefined && currentMps > 0 && soakH !== undefined
      ? Math.min(farthestScentM, scentReach(currentMps, sheet.crabSpeedMps.value, soakH * 3600))
      : undefined
  return {
    enoughM: sheet.spacingM.value,
    ...(swingM === undefined ? {} : { floatsApartM: floatClearance(spacingM, swingM) }),
    ...(reachM === undefined || reachM === 0 ? {} : { reachM, shared: overlapShare(reachM, spacingM) }),
  }
}
