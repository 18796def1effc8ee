import { route } from '@renderer/state/route.svelte'
import { gaugeView } from './gauge-view.svelte'

/** Lays out the sheet at true size for the species that is open. */
export function printGauge(): void {
  const { pack, entry, zone, date } = gaugeView
  if (!pack || !entry) return
  route.print('gauge', {
    region: pack.region,
    species: entry.species.id,
    ...(zone ? { zone } : {}),
    ...(date ? { date } : {}),
  })
}
