import lookUpZone from 'tz-lookup'
import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'

export interface Position {
  readonly latitudeDeg: number
  readonly longitudeDeg: number
}

/** Where a water lies: its own position, else that of its station; undefined where neither is known. */
export function positionOf(water: Water, { tide, current }: WaterConstants): Position | undefined {
  const { latitudeDeg, longitudeDeg } = water
  if (latitudeDeg !== undefined && longitudeDeg !== undefined) return { latitudeDeg, longitudeDeg }
  return (current ?? tide)?.station
}

/** The zone by whose clock a water is shown: its own, else its station's, else its position's; UTC as a last resort. */
export function waterZone(water: Water, constants: WaterConstants): string {
  const station = (constants.tide ?? constants.current)?.station
  if (water.timeZone !== undefined) return water.timeZone
  if (station) return station.timeZone
  const position = positionOf(water, constants)
  return position ? lookUpZone(position.latitudeDeg, position.longitudeDeg) : 'UTC'
}
