import type { Constituent, TideConstants } from '@shared/schema/station'

/**
 * Mean spring and neap ranges from a station's constants.
 *
 * Twice-daily tides: spring 2·(M2 + S2), neap 2·|M2 − S2|. Where the daily terms rule, (K1 + O1)/(M2 + S2) > 3,
 * the tropic and equatorial ranges 2·(K1 + O1) and 2·|K1 − O1| stand for them.
 *
 * @param constituents constants of the station
 * @returns ranges [m], spring ≥ neap ≥ 0
 * @source definitions in Pugh, Tides, Surges and Mean Sea-Level (1987), ch. 3 and 4 (form ratio)
 */
export function meanRanges(constituents: readonly Constituent[]): { springM: number; neapM: number } {
  const of = (name: string) => constituents.find(([known]) => known === name)?.[1] ?? 0
  const daily = of('K1') + of('O1')
  const [a, b] = daily > 3 * (of('M2') + of('S2')) ? [of('K1'), of('O1')] : [of('M2'), of('S2')]
  return { springM: 2 * (a + b), neapM: 2 * Math.abs(a - b) }
}

/**
 * Mean spring and neap ranges at a station, a subordinate's offsets applied.
 *
 * @param tide constants of the station
 * @returns ranges [m], ≥ 0
 */
export function stationRanges(tide: TideConstants): { springM: number; neapM: number } {
  const { springM, neapM } = meanRanges(tide.constituents)
  const { offsets, meanLevelM } = tide
  if (!offsets) return { springM, neapM }
  const here = (rangeM: number) =>
    offsets.kind === 'fixed'
      ? rangeM + offsets.high - offsets.low
      : offsets.high * (meanLevelM + rangeM / 2) - offsets.low * (meanLevelM - rangeM / 2)
  return { springM: Math.max(0, here(springM)), neapM: Math.max(0, here(neapM)) }
}
