import * as v from 'valibot'
import { numberBetween, wholeBetween } from '@shared/schema/fields'
import { stationKinds, StationSchema, WaterConstantsSchema } from '@shared/schema/station'
import { call, nothing } from './call'

/* Looking up tide and current stations, and the constants from which a water is predicted. */

const kind = v.optional(v.picklist(stationKinds))
const latitudeDeg = numberBetween(-90, 90)
const longitudeDeg = numberBetween(-180, 180)
const stationId = v.pipe(v.string(), v.maxLength(120))

export const stations = {
  /** Who publishes the stations, under which licence, and how many each has. */
  'stations:origins': call(
    nothing,
    v.strictObject({
      database: v.string(),
      origins: v.array(
        v.strictObject({
          publisher: v.string(),
          attribution: v.string(),
          licence: v.string(),
          licenceUrl: v.string(),
          stations: v.number(),
        }),
      ),
    }),
  ),
  'stations:search': call(
    v.strictObject({ text: v.pipe(v.string(), v.maxLength(120)), kind, limit: wholeBetween(1, 100) }),
    v.strictObject({ stations: v.array(StationSchema) }),
  ),
  /** Nearest first. `note` says so where even the nearest is too far off to stand for the place. */
  'stations:near': call(
    v.strictObject({ latitudeDeg, longitudeDeg, kind, limit: wholeBetween(1, 100) }),
    v.strictObject({
      stations: v.array(v.strictObject({ station: StationSchema, distanceKm: v.number() })),
      note: v.optional(v.string()),
    }),
  ),
  /** Stations inside a map's bounds, thinned evenly to `limit`; `west` beyond `east` spans the date line. */
  'stations:within': call(
    v.strictObject({
      west: longitudeDeg,
      south: latitudeDeg,
      east: longitudeDeg,
      north: latitudeDeg,
      kind,
      limit: wholeBetween(1, 2000),
    }),
    v.strictObject({ stations: v.array(StationSchema), total: v.number() }),
  ),
  /** Constants of the stations that a water names; a station that is not there is an error that names it. */
  'stations:constants': call(
    v.strictObject({ tide: v.optional(stationId), current: v.optional(stationId) }),
    WaterConstantsSchema,
  ),
}
