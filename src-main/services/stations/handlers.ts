import type { Handlers, Subject } from '@shared/contract/contract'
import type { StationKind } from '@shared/schema/station'
import { err, ok } from '@shared/units/result'
import type { NearStation } from './library'
import { shippedStations } from './shipped'
import { waterConstants } from './water-constants'

/** What the stations answer; they are read-only and come with the program. */
export function stationHandlers(): Handlers<Subject<'stations'>> {
  return {
    'stations:origins': async () => ok((await shippedStations()).origins()),
    'stations:search': async ({ text, kind, limit }) => {
      const library = await shippedStations()
      return ok({ stations: library.search(text, kind, limit) })
    },
    'stations:near': async ({ latitudeDeg, longitudeDeg, kind, limit }) => {
      const library = await shippedStations()
      const stations = library.near(latitudeDeg, longitudeDeg, kind, limit)
      const note = tooFar(stations[0], kind)
      return ok({ stations, ...(note !== undefined && { note }) })
    },
    'stations:within': async ({ kind, limit, ...bounds }) => {
      const library = await shippedStations()
      return ok(library.within(bounds, kind, limit))
    },
    'stations:constants': async ({ tide, current }) => {
      const found = waterConstants(await shippedStations(), { tide, current })
      return found.ok ? ok(found.value) : err(found.error)
    },
  }
}

// Tides change slowly along an open coast; streams change from one headland to the next.
const reachKm = { tide: 50, current: 10 }

/** A sentence where the nearest station is too far off to stand for the place. */
function tooFar(nearest: NearStation | undefined, kind: StationKind | undefined): string | undefined {
  if (!nearest || nearest.distanceKm <= reachKm[nearest.station.kind]) return undefined
  const what = kind === undefined ? 'station' : `${kind} station`
  return (
    `The nearest ${what}, ${nearest.station.name}, is ${Math.round(nearest.distanceKm)} km away. ` +
    'That is too far to stand for this place without local knowledge.'
  )
}
