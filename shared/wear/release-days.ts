import type { WearAssumptions } from './assumptions'
import { rotHalfLife, rotRateAt } from './release-cord'

/** Materials that rot away; any other holds the lid shut for as long as the pot lies there. */
const rotting: ReadonlySet<string> = new Set(['cotton', 'jute', 'sisal', 'hemp'])

/** Strength at which a cord is taken to part by itself: a tenth. */
const halvingsToPart = Math.log2(10)

/**
 * Days under water from half strength to a tenth, between which a release cord is expected to part.
 *
 * T = ln 2/k, and log2(10)·T; k after `rotRateAt`
 *
 * @param material of the cord; left out it is taken as cotton
 * @param sheet    rot and its rise with temperature
 * @param waterC   temperature where it lies [°C]; the sheet's where it is not known
 * @returns days, an order of size and never a date; undefined for a cord that does not rot
 * @source cotton, as `rotRate`; that it parts at a tenth is an assumption, and so is the same rot of other fibres
 */
export function releaseDays(
  material: string | undefined,
  sheet: WearAssumptions,
  waterC: number = sheet.waterC.value,
): { readonly half: number; readonly parted: number } | undefined {
  if (!rotting.has(material ?? 'cotton')) return undefined
  const half = rotHalfLife(
    rotRateAt(sheet.rotPerDay.value, sheet.rotReferenceC.value, waterC, sheet.rotQ10.value),
  )
  return { half, parted: half * halvingsToPart }
}
