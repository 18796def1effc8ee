import type { Component } from 'svelte'
import type { SheetId } from '@renderer/state/route.svelte'

type Load = () => Promise<{ default: Component }>

/** Everything that can be printed; each is fetched when first asked for. */
export const sheets: Readonly<Record<SheetId, Load>> = {
  build: () => import('./build/BuildSheet.svelte'),
  check: () => import('./check/CheckSheet.svelte'),
  labels: () => import('./labels/LabelSheet.svelte'),
  'day-card': () => import('./waters/DayCardSheet.svelte'),
  'tide-table': () => import('./waters/TideTableSheet.svelte'),
  inspection: () => import('./season/InspectionSheets.svelte'),
  'season-list': () => import('./season/SeasonList.svelte'),
  gauge: () => import('@renderer/places/gauge/print/GaugeSheet.svelte'),
}
