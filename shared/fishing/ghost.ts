/**
 * Crabs that a lost pot is expected to kill until it opens: rate times days.
 *
 * @param deathsPerDay rate of one lost pot [crabs/day], ≥ 0
 * @param days         days until it lets its catch go, ≥ 0
 * @returns crabs, from a study of lost pots and not from this one
 * @source Antonelis and others 2011, N. Am. J. Fish. Manage. 31:880-893 (abstract), 24 simulated lost pots over a year
 */
export function expectedDeaths(deathsPerDay: number, days: number): number {
  return deathsPerDay * days
}

/** What lost Dungeness pots did in one study; the only figures of their kind that were found. */
const lostPotStudy = {
  deathsPerDay: 0.058,
  daysWithCord: 126,
  daysWithoutCord: 2.2 * 365.25,
  source:
    'Antonelis and others 2011, North American Journal of Fisheries Management 31:880-893 (abstract; Dungeness crab, Washington)',
} as const

/** Harm of a lost pot beside the same pot without a release cord. */
export interface HarmIfLost {
  readonly daysFishing: number
  readonly shareOfNoCord: number
  readonly source: string
}

/**
 * Harm of a lost pot with a release cord as a share of the harm without one.
 *
 * @param releaseDays days until the cord is expected to part; left out where there is no cord that rots
 * @returns days it goes on fishing and the share of the harm, at most 1
 * @source as `expectedDeaths`; a cord that parts does not always open the pot
 */
export function harmIfLost(releaseDays?: number): HarmIfLost {
  const daysFishing = Math.min(releaseDays ?? Infinity, lostPotStudy.daysWithoutCord)
  return {
    daysFishing,
    shareOfNoCord: daysFishing / lostPotStudy.daysWithoutCord,
    source: lostPotStudy.source,
  }
}
