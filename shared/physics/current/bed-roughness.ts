import type { Bottom } from '@shared/schema/water'
import { vonKarman } from '@shared/physics/constants'

/**
 * Roughness length of each bottom [m].
 *
 * @source Soulsby 1997, Dynamics of Marine Sands, Table 7 (from memory; its drag coefficients reproduce). Rock is
 *   not in the table: gravel is taken
 */
const roughness: Readonly<Record<Bottom, number>> = {
  mud: 0.0002,
  silt: 0.00005,
  'silty-sand': 0.0007,
  sand: 0.0004,
  'rippled-sand': 0.006,
  gravel: 0.003,
  rock: 0.003,
}

export const bedRoughness = (bottom: Bottom): number => roughness[bottom]

/**
 * Drag coefficient of the bed for the speed one metre above it.
 *
 * CD100 = (0.40/ln(1 m/z0))²
 *
 * @param roughnessM roughness length z0 [m], between 0 and 1
 * @returns drag coefficient [-]
 * @throws {RangeError} roughness outside 0 to 1 m
 * @source Soulsby 1997, Dynamics of Marine Sands, Table 7 and ch. 3
 */
export function bedDragCoefficient(roughnessM: number): number {
  if (!(roughnessM > 0 && roughnessM < 1))
    throw new RangeError(`bedDragCoefficient: z0=${roughnessM} m must lie between 0 and 1 m`)
  return (vonKarman / Math.log(1 / roughnessM)) ** 2
}
