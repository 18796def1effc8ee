import type { Figure, Finding, Verdict } from '@shared/schema/check'
import { worstState } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import { plainLocale, type ReaderLocale } from '@shared/units/locale'
import { fishingAssumptions, type FishingAssumptions } from './assumptions'
import { baitOutOfReach, baitOutlastsSoak } from './findings/bait'
import { legalCrabFitsEntrance } from './findings/entrance'
import { gapFindings } from './findings/gap'
import { baseDown, haulPointClear } from './findings/stance'
import type { LegalSize } from './legal-size'
import { baitLeft, bestSoak, isOpenGear } from './outlook'

export interface FishesInput {
  readonly pot: Pot
  readonly trip?: Trip
  /** Least legal sizes of the species sought, as the rules of the place take them. */
  readonly legalSizes?: readonly LegalSize[]
  /** Whether it comes to rest base down, from where its weight and lift are. */
  readonly landing?: 'holds' | 'close' | 'fails'
  readonly assumptions?: FishingAssumptions
  /** How the sentences write quantities; figures stay as they are. Metric with a full stop unless said. */
  readonly locale?: ReaderLocale
}

/**
 * Whether a pot fishes as it should: bait that outlasts the soak and is out of reach, an entrance that lets a
 * legal crab in, gaps that let undersized ones out, a haul point clear of the entrances, base down.
 *
 * @param input the pot, the trip and what the rules and the pot's weights say
 * @returns findings in a fixed order, with the share of bait left and the best soak as figures; relative
 *   measures only, never a number of crabs
 */
export function fishes(input: FishesInput): Verdict {
  const { pot, trip, assumptions: sheet = fishingAssumptions, locale = plainLocale } = input
  const enclosed = isOpenGear(pot) ? [] : enclosedFindings(input, sheet, locale)
  const findings = [baitOutlastsSoak(pot, trip, sheet, locale), ...enclosed, baseDown(input.landing)]
  return {
    state: worstState(findings.map((finding) => finding.state)),
    findings,
    figures: figuresOf(pot, trip, sheet),
  }
}

/** What can be asked only of gear that shuts crabs in. */
function enclosedFindings(
  { pot, legalSizes }: FishesInput,
  sheet: FishingAssumptions,
  locale: ReaderLocale,
): Finding[] {
  const perCrab = legalSizes?.length
    ? legalSizes.flatMap((legal) => [
        legalCrabFitsEntrance(pot, legal, locale),
        ...gapFindings(pot, legal, sheet, locale),
      ])
    : [noLegalSize]
  return [baitOutOfReach(pot, sheet), ...perCrab, haulPointClear(pot, sheet, locale)]
}

const noLegalSize: Finding = {
  rule: 'fishes:crab-size',
  state: 'cannot-tell',
  part: 'trip',
  what: 'Cannot tell what fits the entrances and gaps without the crab sought and its least legal size.',
  missing: 'the crab sought and its least legal size',
  standing: 'engineering',
}

function figuresOf(pot: Pot, trip: Trip | undefined, sheet: FishingAssumptions): Record<string, Figure> {
  const { bait } = pot
  if (!bait) return {}
  return {
    ...(trip?.soakH === undefined ? {} : { baitLeftAtEnd: baitLeft(bait, sheet, trip.soakH) }),
    bestSoakH: bestSoak(pot, bait, sheet),
  }
}
