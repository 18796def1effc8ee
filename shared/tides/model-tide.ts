import type { Constituent } from '@shared/schema/station'

// Springs follow new and full moon by one to two days; in one and a half, S2 gains 36.6° on M2.
const ageHours = 36
const gainDegPerHour = 30 - 28.9841042

/**
 * Constituents of a plain twice-daily tide with given spring and neap ranges, where no station is named.
 *
 * M2 = (spring + neap)/4, S2 = (spring − neap)/4; springs a day and a half after new and full moon. High water
 * comes at no particular hour: only intervals mean anything, not the time of day.
 *
 * @param springM range at springs [m], ≥ 0
 * @param neapM   range at neaps [m], 0 … springM; without it every tide is taken as a spring tide
 * @returns M2 and S2; the low water of springs lies springM/2 below the mean
 */
export function modelTide(springM: number, neapM: number = springM): Constituent[] {
  return [
    ['M2', (springM + neapM) / 4, 0],
    ['S2', (springM - neapM) / 4, ageHours * gainDegPerHour],
  ]
}
