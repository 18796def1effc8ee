import type { CurrentConstants, Station, StationKind, TideConstants } from '@shared/schema/station'
import type { Reply } from '@shared/contract/contract'
import { MPS_PER_KNOT } from '@shared/units/display'
import type { PackedConstants, StationIndex, StationRow } from './packed'
import { distanceKm } from './distance'

export interface NearStation {
  readonly station: Station
  readonly distanceKm: number
}

/** Stations for looking up: who they are, where, and the constants to predict them from. */
export class StationLibrary {
  readonly #byId: Map<string, StationRow>
  readonly #texts: Map<string, string>

  constructor(
    private readonly index: StationIndex,
    private readonly constants: PackedConstants,
  ) {
    this.#byId = new Map(index.stations.map((row) => [row[0], row]))
    this.#texts = new Map(index.stations.map((row) => [row[0], searchable(`${row[2]} ${row[3]} ${row[0]}`)]))
  }

  get count(): number {
    return this.index.stations.length
  }

  /** Who publishes the stations, the one with most of them first. */
  origins(): Reply<'stations:origins'> {
    const counts = new Map<number, number>()
    for (const row of this.index.stations) counts.set(row[8], (counts.get(row[8]) ?? 0) + 1)
    const origins = this.index.origins.map((origin, number) => ({
      ...origin,
      stations: counts.get(number) ?? 0,
    }))
    return { database: this.index.database, origins: origins.sort((a, b) => b.stations - a.stations) }
  }

  get(id: string): Station | undefined {
    const row = this.#byId.get(id)
    return row && this.#station(row)
  }

  /** Stations that hold every word of the text in name, place or id; best match first. */
  search(text: string, kind: StationKind | undefined, limit: number): Station[] {
    const words = searchable(text).split(' ').filter(Boolean)
    if (words.length === 0) return []
    return this.#ofKind(kind)
      .map((row) => ({ row, score: this.#score(row, words) }))
      .filter(({ score }) => score > 0)
      .sort(
        (a, b) => b.score - a.score || a.row[2].length - b.row[2].length || (a.row[0] < b.row[0] ? -1 : 1),
      )
      .slice(0, limit)
      .map(({ row }) => this.#station(row))
  }

  /** Stations nearest to a position, nearest first. */
  near(
    latitudeDeg: number,
    longitudeDeg: number,
    kind: StationKind | undefined,
    limit: number,
  ): NearStation[] {
    return this.#ofKind(kind)
      .map((row) => ({ row, distanceKm: distanceKm(latitudeDeg, longitudeDeg, row[4], row[5]) }))
      .sort((a, b) => a.distanceKm - b.distanceKm)
      .slice(0, limit)
      .map(({ row, distanceKm }) => ({ station: this.#station(row), distanceKm }))
  }

  /** Stations inside a map's bounds; where there are more than `limit`, an even choice over the list. */
  within(
    bounds: { west: number; south: number; east: number; north: number },
    kind: StationKind | undefined,
    limit: number,
  ): { stations: Station[]; total: number } {
    const { west, south, east, north } = bounds
    const inLongitude = (x: number) => (west <= east ? x >= west && x <= east : x >= west || x <= east)
    const rows = this.#ofKind(kind).filter((row) => row[4] >= south && row[4] <= north && inLongitude(row[5]))
    const every = Math.max(1, rows.length / limit)
    const chosen = rows.filter((_, i) => Math.floor(i / every) !== Math.floor((i - 1) / every))
    return { stations: chosen.map((row) => this.#station(row)), total: rows.length }
  }

  tideConstants(id: string): TideConstants | undefined {
    const station = this.get(id)
    const packed = this.constants
    const offsets = packed.tideOffsets[id]
    const row = packed.tides[offsets?.reference ?? id]
    if (!station || !row) return undefined
    return {
      station,
      datum: offsets?.datum ?? row.datum,
      meanLevelM: offsets?.mean ?? row.mean,
      constituents: unflatten(packed.names, row.sum, 1),
      ...(row.recordsEnd !== undefined && { recordsEnd: row.recordsEnd }),
      ...(offsets && {
        offsets: {
          reference: offsets.reference,
          highMinutes: offsets.minutes[0],
          lowMinutes: offsets.minutes[1],
          kind: offsets.kind,
          high: offsets.heights[0],
          low: offsets.heights[1],
        },
      }),
    }
  }

  currentConstants(id: string): CurrentConstants | undefined {
    const station = this.get(id)
    const packed = this.constants
    const offsets = packed.currentOffsets[id]
    const row = packed.currents[offsets?.reference ?? id]
    if (!station || !row) return undefined
    const { flood, ebb } = offsets ?? row
    return {
      station,
      ...(flood !== undefined && { floodDeg: flood }),
      ...(ebb !== undefined && { ebbDeg: ebb }),
      meanFlowMps: row.mean * MPS_PER_KNOT,
      constituents: unflatten(packed.names, row.sum, MPS_PER_KNOT),
      ...(offsets && {
        offsets: {
          reference: offsets.reference,
          slackBeforeFloodMinutes: offsets.minutes[0],
          slackBeforeEbbMinutes: offsets.minutes[1],
          floodMinutes: offsets.minutes[2],
          ebbMinutes: offsets.minutes[3],
          floodRatio: offsets.ratios[0],
          ebbRatio: offsets.ratios[1],
        },
      }),
    }
  }

  #ofKind(kind: StationKind | undefined): readonly StationRow[] {
    if (kind === undefined) return this.index.stations
    const letter = kind === 'tide' ? 't' : 'c'
    return this.index.stations.filter((row) => row[1] === letter)
  }

  #score(row: StationRow, words: readonly string[]): number {
    const text = this.#texts.get(row[0]) ?? ''
    const name = searchable(row[2])
    let score = 0
    for (const word of words) {
      if (name.startsWith(word)) score += 4
      else if (` ${name}`.includes(` ${word}`)) score += 3
      else if (` ${text}`.includes(` ${word}`)) score += 2
      else if (text.includes(word)) score += 1
      else return 0
    }
    return score
  }

  #station(row: StationRow): Station {
    const [id, letter, name, place, latitudeDeg, longitudeDeg, zone, subordinate, origin] = row
    const from = this.index.origins[origin]
    const timeZone = this.index.zones[zone]
    if (!from || timeZone === undefined)
      throw new RangeError(`station ${id} refers to a text that is not there`)
    return {
      id,
      kind: letter === 't' ? 'tide' : 'current',
      name,
      place,
      latitudeDeg,
      longitudeDeg,
      timeZone,
      subordinate: subordinate === 1,
      ...from,
    }
  }
}

/** Lower case, without accents or punctuation, so that people find what they can type. */
function searchable(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()
}

function unflatten(names: readonly string[], sum: readonly number[], scale: number) {
  const constituents: [string, number, number][] = []
  for (let i = 0; i + 2 < sum.length; i += 3)
    constituents.push([names[sum[i] ?? -1] ?? '', (sum[i + 1] ?? 0) * scale, sum[i + 2] ?? 0])
  return constituents
}
