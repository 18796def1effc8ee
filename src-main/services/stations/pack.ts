import { stations as databaseStations, stationsById, type Station } from '@neaps/tide-database'
import { constituents as models } from '@neaps/tide-predictor'
import type {
  CurrentOffsetRow,
  CurrentRow,
  Origin,
  PackedStations,
  StationRow,
  TideOffsetRow,
  TideRow,
} from './packed'

/**
 * Makes the shipped station files from the tide database, at build time.
 *
 * Left out: stations whose licence forbids commercial use, stations without constants to predict from, and tide
 * stations whose mean level above chart datum is not known, since a height that hangs on nothing tells no depth.
 */
export function packStations(database: string): PackedStations {
  const origins = new Numbered<Origin>((origin) => JSON.stringify(origin))
  const zones = new Numbered<string>((zone) => zone)
  const names = new Numbered<string>((name) => name)
  const rows: StationRow[] = []
  const tides: Record<string, TideRow> = {}
  const tideOffsets: Record<string, TideOffsetRow> = {}
  const currents: Record<string, CurrentRow> = {}
  const currentOffsets: Record<string, CurrentOffsetRow> = {}

  const sumOf = (station: Station) =>
    station.harmonic_constituents
      .filter(({ name, amplitude }) => amplitude !== 0 && models[name] !== undefined)
      .flatMap(({ name, amplitude, phase }) => [names.of(name), round(amplitude, 4), round(phase, 2)])

  for (const station of databaseStations) {
    if (!isShippable(station)) continue
    const subordinate = station.type === 'subordinate'
    if (station.kind === 'tide') {
      const row = subordinate ? tideOffsetRow(station) : tideRow(station, sumOf(station))
      if (!row) continue
      if ('reference' in row) tideOffsets[station.id] = row
      else tides[station.id] = row
    } else {
      const row = subordinate ? currentOffsetRow(station) : currentRow(station, sumOf(station))
      if (!row) continue
      if ('reference' in row) currentOffsets[station.id] = row
      else currents[station.id] = row
    }
    rows.push([
      station.id,
      station.kind === 'tide' ? 't' : 'c',
      station.name,
      placeOf(station),
      round(station.latitude, 4),
      round(station.longitude, 4),
      zones.of(station.timezone),
      subordinate ? 1 : 0,
      origins.of({
        publisher: station.source.name,
        attribution: station.attribution,
        licence: station.license.type,
        licenceUrl: station.license.url,
      }),
    ])
  }
  return {
    index: { version: 1, database, origins: origins.all, zones: zones.all, stations: rows },
    constants: { version: 1, names: names.all, tides, tideOffsets, currents, currentOffsets },
  }
}

function isShippable(station: Station): boolean {
  if (!station.license.commercial_use) return false
  const reference = station.offsets?.reference ?? station.current?.offsets?.reference
  const source = reference === undefined ? station : stationsById.get(reference)
  return source !== undefined && source.license.commercial_use && source.harmonic_constituents.length > 0
}

function meanAboveDatum({ chart_datum, datums }: Station): { datum: string; mean: number } | undefined {
  const datum = chart_datum
  const zero = datum === undefined ? undefined : datums[datum]
  const mean = datums['MSL']
  if (datum === undefined || zero === undefined || mean === undefined) return undefined
  return { datum, mean: round(mean - zero, 4) }
}

function tideRow(station: Station, sum: number[]): TideRow | undefined {
  const level = meanAboveDatum(station)
  const year = Number(station.epoch?.end.slice(0, 4))
  return level && { ...level, ...(year > 0 && { recordsEnd: year }), sum }
}

function tideOffsetRow(station: Station): TideOffsetRow | undefined {
  const { offsets } = station
  const level = meanAboveDatum(station)
  if (!offsets || !level) return undefined
  return {
    reference: offsets.reference,
    ...level,
    minutes: [offsets.time.high, offsets.time.low],
    kind: offsets.height.type,
    heights: [round(offsets.height.high, 4), round(offsets.height.low, 4)],
  }
}

function directions(station: Station): { flood?: number; ebb?: number } {
  const { flood_direction: flood, ebb_direction: ebb } = station.current ?? {}
  return {
    ...(flood !== undefined && { flood: round(flood, 1) }),
    ...(ebb !== undefined && { ebb: round(ebb, 1) }),
  }
}

function currentRow(station: Station, sum: number[]): CurrentRow | undefined {
  const mean = station.current?.mean_flow
  return mean === undefined ? undefined : { ...directions(station), mean: round(mean, 4), sum }
}

function currentOffsetRow(station: Station): CurrentOffsetRow | undefined {
  const offsets = station.current?.offsets
  if (!offsets) return undefined
  const { slack_before_flood, slack_before_ebb, flood_time, ebb_time } = offsets
  const { flood_speed_ratio, ebb_speed_ratio } = offsets
  const given = [
    slack_before_flood,
    slack_before_ebb,
    flood_time,
    ebb_time,
    flood_speed_ratio,
    ebb_speed_ratio,
  ]
  const [beforeFlood, beforeEbb, flood, ebb, floodRatio, ebbRatio] = given
  if (
    beforeFlood === undefined ||
    beforeEbb === undefined ||
    flood === undefined ||
    ebb === undefined ||
    floodRatio === undefined ||
    ebbRatio === undefined
  )
    return undefined
  return {
    reference: offsets.reference,
    ...directions(station),
    minutes: [beforeFlood, beforeEbb, flood, ebb],
    ratios: [round(floodRatio, 3), round(ebbRatio, 3)],
  }
}

function placeOf({ context, locality, region, country, name }: Station): string {
  const parts = [context, locality, region, country].filter(
    (part): part is string => part !== undefined && part !== '' && part !== name,
  )
  return parts.filter((part, i) => !parts.slice(0, i).some((earlier) => earlier.includes(part))).join(', ')
}

const round = (value: number, digits: number) => Number(value.toFixed(digits))

/** Gives each different value a number, in order of first meeting. */
class Numbered<T> {
  readonly all: T[] = []
  readonly #known = new Map<string, number>()
  constructor(private readonly key: (value: T) => string) {}

  of(value: T): number {
    const key = this.key(value)
    const known = this.#known.get(key)
    if (known !== undefined) return known
    this.#known.set(key, this.all.length)
    return this.all.push(value) - 1
  }
}
