import { gravity } from '@shared/physics/constants'

/** A pot let go at the surface. Heights are above its base. */
export interface SinkingPot {
  readonly massKg: number
  readonly centreOfGravityM: number
  readonly displacedM3: number
  readonly centreOfBuoyancyM: number
  /** What meets the water from below as it sinks: drag area Cd·A and height of each piece. */
  readonly planDrag: readonly { readonly dragAreaM2: number; readonly heightM: number }[]
  readonly waterDensity: number
}

/** How a pot comes down. */
export interface Sinking {
  /** Speed at which drag carries the submerged weight [m/s]; 0 for a pot that floats. */
  readonly speedMps: number
  /** Arm of the couple that turns it base down, on its weight [m]; negative turns it over. */
  readonly rightingArmM: number
  readonly landsBaseDown: boolean
}

/**
 * Whether a pot that sinks freely turns, and stays, base down.
 *
 * Buoyancy ρgV acts at the centre of buoyancy and, at the final speed, drag equal to the submerged weight W acts at
 * the centre of the drag areas. Tilted a little, both turn the pot about its centre of gravity with the arm
 * a = (ρgV (z_b - z_g) + W (z_d - z_g))/(m g); it stays base down when a > 0.
 *
 * The rope is taken as slack, and the water as still; a flat pot may still flutter on its way.
 *
 * @param pot masses, volumes, drag areas and their heights
 * @returns final speed, righting arm, and whether it lands base down; a pot that floats does not land
 * @throws {RangeError} mass not positive
 * @source statics of a body in vertical flow
 */
export function sinking(pot: SinkingPot): Sinking {
  const weight = pot.massKg * gravity
  if (!(weight > 0)) throw new RangeError(`sinking: mass ${pot.massKg} kg must be positive`)
  const buoyancy = pot.waterDensity * gravity * pot.displacedM3
  const wet = weight - buoyancy
  let area = 0
  let moment = 0
  for (const piece of pot.planDrag) {
    area += piece.dragAreaM2
    moment += piece.dragAreaM2 * piece.heightM
  }
  const dragHeight = area > 0 ? moment / area : pot.centreOfGravityM
  const rightingArmM =
    (buoyancy * (pot.centreOfBuoyancyM - pot.centreOfGravityM) +
      Math.max(0, wet) * (dragHeight - pot.centreOfGravityM)) /
    weight
  const speedMps = wet > 0 && area > 0 ? Math.sqrt((2 * wet) / (pot.waterDensity * area)) : 0
  return { speedMps, rightingArmM, landsBaseDown: wet > 0 && rightingArmM > 0 }
}
