import { geoDistance } from 'd3-geo'
import { reader } from '@renderer/ui/reader.svelte'

// Mean radius of the IUGG.
const earthKm = 6371.0088

export const distanceKm = (latA: number, lonA: number, latB: number, lonB: number) =>
  geoDistance([lonA, latA], [lonB, latB]) * earthKm

export const sayKm = (km: number) => (km < 10 ? reader.digits(km, 2) : String(Math.round(km)))

/** As a chart has it: 48°33.1′ N 122°45.6′ W. */
export function sayPosition({
  latitudeDeg,
  longitudeDeg,
}: {
  latitudeDeg: number
  longitudeDeg: number
}): string {
  return `${sayAngle(latitudeDeg, 'N', 'S')} ${sayAngle(longitudeDeg, 'E', 'W')}`
}

function sayAngle(deg: number, positive: string, negative: string): string {
  const tenths = Math.round(Math.abs(deg) * 600)
  const minutes = `${Math.floor((tenths % 600) / 10)}${reader.decimalMark}${tenths % 10}`
  return `${Math.floor(tenths / 600)}°${minutes}′ ${deg < 0 ? negative : positive}`
}
