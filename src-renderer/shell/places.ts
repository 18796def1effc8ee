import type { Component } from 'svelte'
import type { PlaceId } from '@renderer/state/route.svelte'

type Load = () => Promise<{ default: Component }>

/** The places in the order of the circle, then the two helpers; each is fetched when first opened. */
export const places: readonly { id: PlaceId; helper?: boolean; load: Load }[] = [
  { id: 'bench', load: () => import('@renderer/places/bench/Bench.svelte') },
  { id: 'waters', load: () => import('@renderer/places/waters/Waters.svelte') },
  { id: 'match', load: () => import('@renderer/places/match/Match.svelte') },
  { id: 'locker', load: () => import('@renderer/places/locker/Locker.svelte') },
  { id: 'runs', load: () => import('@renderer/places/runs/Runs.svelte') },
  { id: 'season', load: () => import('@renderer/places/season/Season.svelte') },
  { id: 'rulebook', helper: true, load: () => import('@renderer/places/rulebook/Rulebook.svelte') },
  { id: 'gauge', helper: true, load: () => import('@renderer/places/gauge/Gauge.svelte') },
  { id: 'workshop', helper: true, load: () => import('@renderer/places/workshop/Workshop.svelte') },
]

export const findPlace = (id: PlaceId) => places.find((one) => one.id === id)
