import { settings } from './settings.svelte'

const placeIds = [
  'bench',
  'waters',
  'match',
  'locker',
  'runs',
  'season',
  'rulebook',
  'gauge',
  'workshop',
] as const
export type PlaceId = (typeof placeIds)[number]

/** The places of the circle are remembered between starts; the helpers are not. */
type Remembered = Exclude<PlaceId, 'rulebook' | 'gauge' | 'workshop'>

const sheetIds = [
  'build',
  'check',
  'labels',
  'day-card',
  'tide-table',
  'inspection',
  'season-list',
  'gauge',
] as const
export type SheetId = (typeof sheetIds)[number]

export type SheetParams = Readonly<Record<string, string>>

/** A sheet to print that stands in place of everything else, as `#print/build?pot=x`. */
interface OpenSheet {
  readonly id: SheetId
  readonly params: SheetParams
}

/** Which place is open, kept in the address so that back and forward work. */
class Route {
  place = $state<PlaceId>(placeIn(location.hash) ?? 'bench')
  /** What the place was asked to open on, as the id of a water; empty when nothing was asked. */
  detail = $state(detailIn(location.hash))

  sheet = $state.raw<OpenSheet | undefined>(sheetIn(location.hash))

  /** What the sheet was asked for besides its kind: which water, which day. */
  params = $derived.by((): SheetParams => this.sheet?.params ?? {})

  /** Shows a sheet to print. */
  print(id: SheetId, params: SheetParams = {}): void {
    this.sheet = { id, params }
    const query = new URLSearchParams(params).toString()
    history.pushState(null, '', query ? `#print/${id}?${query}` : `#print/${id}`)
  }

  /** Puts the place back that was open before a sheet. */
  leaveSheet(): void {
    this.go(this.place, this.detail)
  }

  go(place: PlaceId, detail = ''): void {
    this.sheet = undefined
    this.place = place
    this.detail = detail
    const hash = detail ? `#/${place}/${encodeURIComponent(detail)}` : `#/${place}`
    if (location.hash !== hash) history.pushState(null, '', hash)
    if (isRemembered(place)) void settings.set({ place })
  }

  /** Takes the place from the address, after a step back or forward. */
  follow(): void {
    this.sheet = sheetIn(location.hash)
    if (this.sheet) return
    this.place = placeIn(location.hash) ?? 'bench'
    this.detail = detailIn(location.hash)
  }
}

function placeIn(hash: string): PlaceId | undefined {
  const [, name] = hash.startsWith('#/') ? hash.split('/') : []
  return placeIds.find((id) => id === name)
}

function sheetIn(hash: string): OpenSheet | undefined {
  const [, name, query] = /^#print\/([a-z-]+)(?:\?(.*))?$/.exec(hash) ?? []
  const id = sheetIds.find((one) => one === name)
  return id && { id, params: Object.fromEntries(new URLSearchParams(query ?? '')) }
}

function detailIn(hash: string): string {
  return hash.startsWith('#/') ? decodeURIComponent(hash.split('/')[2] ?? '') : ''
}

function isRemembered(place: PlaceId): place is Remembered {
  return place !== 'rulebook' && place !== 'gauge' && place !== 'workshop'
}

export const route = new Route()
