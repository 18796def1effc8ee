import { settings } from './settings.svelte'

export const placeIds = ['bench', 'waters', 'match', 'locker', 'runs', 'season', 'rulebook', 'gauge'] as const
export type PlaceId = (typeof placeIds)[number]

/** The places of the circle are remembered between starts; the two helpers are not. */
type Remembered = Exclude<PlaceId, 'rulebook' | 'gauge'>

/** Which place is open, kept in the address so that back and forward work. */
class Route {
  place = $state<PlaceId>(placeIn(location.hash) ?? 'bench')
  /** What the place was asked to open on, as the id of a water; empty when nothing was asked. */
  detail = $state(detailIn(location.hash))

  go(place: PlaceId, detail = ''): void {
    this.place = place
    this.detail = detail
    const hash = detail ? `#/${place}/${encodeURIComponent(detail)}` : `#/${place}`
    if (location.hash !== hash) history.pushState(null, '', hash)
    if (isRemembered(place)) void settings.set({ place })
  }

  /** Takes the place from the address, after a step back or forward. */
  follow(): void {
    this.place = placeIn(location.hash) ?? 'bench'
    this.detail = detailIn(location.hash)
  }
}

function placeIn(hash: string): PlaceId | undefined {
  const [, name] = hash.split('/')
  return placeIds.find((id) => id === name)
}

function detailIn(hash: string): string {
  return decodeURIComponent(hash.split('/')[2] ?? '')
}

function isRemembered(place: PlaceId): place is Remembered {
  return place !== 'rulebook' && place !== 'gauge'
}

export const route = new Route()
