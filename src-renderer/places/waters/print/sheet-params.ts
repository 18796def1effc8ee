import type { Water } from '@shared/schema/water'
import { tideView } from '../tide/tide-view.svelte'

/** What a sheet of a water has to know: the day, the pot and the soak that the tide picture shows. */
export function sheetParams(water: Water): Record<string, string> {
  const { day, pot, soakH } = tideView
  return {
    water: water.id,
    ...(day === undefined ? {} : { day }),
    pot: pot?.id ?? 'none',
    soakH: String(soakH),
  }
}
