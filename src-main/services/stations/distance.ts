const earthKm = 6371.0088

/**
 * Distance over the ground between two positions, by the haversine formula on a sphere.
 *
 * @returns kilometres; within 0.6 % of the ellipsoid
 * @source mean earth radius R1 of the IUGG, 6371.0088 km
 */
export function distanceKm(latA: number, lonA: number, latB: number, lonB: number): number {
  const rad = Math.PI / 180
  const a =
    Math.sin(((latB - latA) * rad) / 2) ** 2 +
    Math.cos(latA * rad) * Math.cos(latB * rad) * Math.sin(((lonB - lonA) * rad) / 2) ** 2
  return 2 * earthKm * Math.asin(Math.min(1, Math.sqrt(a)))
}
