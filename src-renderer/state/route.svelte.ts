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

/** A place, with what it was asked to open on, as the id of a water; empty when nothing was asked. */
interface OpenPlace {
  readonly place: PlaceId
  readonly detail: string
}

const start: OpenPlace = { place: 'bench', detail: '' }

/** Which place is open, kept in the address so that back and forward work. */
export class Route {
  place = $state<PlaceId>(start.place)
  detail = $state(start.detail)
  sheet = $state.raw<OpenSheet>()
  /** The last that led somewhere. */
  #address = ''

  constructor() {
    this.follow()
  }

  /** What the sheet was asked for besides its kind: which water, which day. */
  params = $derived.by((): SheetParams => this.sheet?.params ?? {})

  /** Shows a sheet to print. */
  print(id: SheetId, params: SheetParams = {}): void {
    this.sheet = { id, params }
    this.#goTo(addressOf(this.sheet))
  }

  /** Puts the place back that was open before a sheet. */
  leaveSheet(): void {
    this.go(this.place, this.detail)
  }

  go(place: PlaceId, detail = ''): void {
    this.sheet = undefined
    this.place = place
    this.detail = detail
    this.#goTo(detail ? `#/${place}/${encodeURIComponent(detail)}` : `#/${place}`)
    if (isRemembered(place)) void settings.set({ place })
  }

  /** Takes the place from the address, as after a step back; an address that leads nowhere gives way to the last. */
  follow(): void {
    const { hash, pathname, search } = location
    const sheet = sheetIn(hash)
    const open = hash === '' ? start : placeIn(hash)
    if (sheet || open) {
      this.#address = hash
      this.sheet = sheet
      if (open) [this.place, this.detail] = [open.place, open.detail]
    } else history.replaceState(null, '', `${pathname}${search}${this.#address}`)
  }

  #goTo(hash: string): void {
    this.#address = hash
    if (location.hash !== hash) history.pushState(null, '', hash)
  }
}

function placeIn(hash: string): OpenPlace | undefined {
  const [, name, detail = ''] = hash.startsWith('#/') ? hash.split('/') : []
  const place = placeIds.find((id) => id === name)
  const text = decoded(detail)
  return place && text !== undefined ? { place, detail: text } : undefined
}

function sheetIn(hash: string): OpenSheet | undefined {
  const [, name, query] = /^#print\/([a-z-]+)(?:\?(.*))?$/.exec(hash) ?? []
  const id = sheetIds.find((one) => one === name)
  return id && { id, params: Object.fromEntries(new URLSearchParams(query ?? '')) }
}

function addressOf({ id, params }: OpenSheet): string {
  const query = new URLSearchParams(params).toString()
  return query ? `#print/${id}?${query}` : `#print/${id}`
}

/** Undefined where it is no text, as a `%` typed by hand. */
function decoded(part: string): string | undefined {
  try {
    return decodeURIComponent(part)
  } catch {
    return undefined
  }
}

function isRemembered(place: PlaceId): place is Remembered {
  return place !== 'rulebook' && place !== 'gauge' && place !== 'workshop'
}

export const route = new Route()
