import type { Station, StationKind } from '@shared/schema/station'
import { bridge } from '@renderer/state/bridge'
import type { MapBounds } from './map-view.svelte'

const WAIT_MS = 180
const ON_MAP = 400

export interface FoundStation {
  readonly station: Station
  readonly distanceKm?: number
}

/** Stations by name, by position or on the map, whichever the reader asks for last. */
export class StationSearch {
  kind = $state<StationKind>('tide')
  text = $state('')
  latitudeDeg = $state<number>()
  longitudeDeg = $state<number>()
  /** What was asked for, found by name or by position; undefined while the map alone is asked. */
  found = $state.raw<readonly FoundStation[]>()
  /** A sentence where even the nearest is too far off. */
  note = $state<string>()
  fault = $state<string>()
  onMap = $state.raw<readonly Station[]>([])
  total = $state(0)
  #timer: ReturnType<typeof setTimeout> | undefined
  #asked = 0
  #bounds: MapBounds | undefined

  /** Which of the three ways the list shows. */
  way = $derived.by((): 'name' | 'near' | 'map' => {
    if (this.text.trim() !== '') return 'name'
    return this.latitudeDeg !== undefined && this.longitudeDeg !== undefined ? 'near' : 'map'
  })
  list = $derived.by((): readonly FoundStation[] =>
    this.way === 'map' ? this.onMap.map((station) => ({ station })) : (this.found ?? []),
  )

  constructor(kind: StationKind, near?: { latitudeDeg: number; longitudeDeg: number }) {
    this.kind = kind
    if (near) this.near(near.latitudeDeg, near.longitudeDeg)
  }

  changeKind(kind: StationKind): void {
    this.kind = kind
    this.#ask()
    if (this.#bounds) this.look(this.#bounds)
  }

  name(text: string): void {
    this.text = text
    this.#ask()
  }

  near(latitudeDeg: number | undefined, longitudeDeg: number | undefined): void {
    this.text = ''
    this.latitudeDeg = latitudeDeg
    this.longitudeDeg = longitudeDeg
    this.#ask()
  }

  /** The map shows other bounds. */
  look(bounds: MapBounds): void {
    this.#bounds = bounds
    const { kind } = this
    void bridge('stations:within', { ...bounds, kind, limit: ON_MAP }).then((answer) => {
      if (kind !== this.kind || bounds !== this.#bounds) return
      if (!answer.ok) this.fault = answer.error.message
      else {
        this.onMap = answer.value.stations
        this.total = answer.value.total
      }
    })
  }

  #ask(): void {
    clearTimeout(this.#timer)
    this.#timer = setTimeout(() => void this.#fetch(), WAIT_MS)
  }

  async #fetch(): Promise<void> {
    const asked = ++this.#asked
    const { way, kind, text, latitudeDeg, longitudeDeg } = this
    this.note = undefined
    this.fault = undefined
    if (way === 'map') {
      this.found = undefined
      return
    }
    const answer =
      way === 'name'
        ? await bridge('stations:search', { text, kind, limit: 40 })
        : await bridge('stations:near', {
            latitudeDeg: latitudeDeg ?? 0,
            longitudeDeg: longitudeDeg ?? 0,
            kind,
            limit: 12,
          })
    if (asked !== this.#asked) return
    if (!answer.ok) {
      this.fault = answer.error.message
      return
    }
    this.found = answer.value.stations.map((one) => ('station' in one ? one : { station: one }))
    this.note = 'note' in answer.value ? answer.value.note : undefined
  }
}
