import type { CurrentProfile } from '@shared/physics/current/profile'
import type { FloatBody } from '@shared/physics/float/float-body'

/** A weight tied into the rope. */
export interface Clump {
  /** Distance along the rope from the float [m]. */
  readonly atFromFloatM: number
  /** Weight in water, positive sinks [N]. */
  readonly wetWeightN: number
}

/** A rope between a pot and its float in a current. */
export interface LineProblem extends CurrentProfile {
  readonly ropeLengthM: number
  readonly ropeDiameterM: number
  /** Weight of the rope in water per metre, positive sinks [N/m]. */
  readonly ropeWetWeightNpm: number
  readonly clumps: readonly Clump[]
  readonly float: FloatBody
  /** Drag coefficient across the rope, on diameter times length. */
  readonly cdn: number
  /** Drag coefficient along the rope, on diameter times length. */
  readonly cdt: number
  readonly waterDensity: number
  /** Height above the bed at which the rope is made fast [m]. */
  readonly potHeightM: number
}

/** Rope and float in balance. Forces in N, lengths in m. */
export interface LineSolution {
  /** `surface`: the float shows; `under`: it is drawn below the surface. */
  readonly state: 'surface' | 'under'
  /** Upward force that the rope and the current ask of the float: the buoyancy used. */
  readonly verticalN: number
  /** Net buoyancy left; 0 when under. */
  readonly reserveN: number
  /** Depth of the float below the surface; 0 at the surface. */
  readonly dipM: number
  readonly floatDragN: number
  /** Pull of the rope on the pot along the current. */
  readonly potHorizontalN: number
  /** Upward pull of the rope on the pot. */
  readonly potUpliftN: number
  /** Distance of the float down-current from the pot: the swing radius. */
  readonly offsetM: number
  readonly tensionMaxN: number
  /** Length of rope lying on the bed. */
  readonly onBottomM: number
  /** Length of rope lying on the surface. */
  readonly slackSurfaceM: number
  /** x, z pairs from the float to the pot; x down-current from the pot, z above the bed. Empty when rough. */
  readonly shape: Float64Array
  /** Loads on the rope between float and pot, for the balance of forces. */
  readonly loads: { readonly dragXN: number; readonly dragZN: number; readonly weightN: number }
  /** Distance by which the rope's lower end misses the pot, over the rope's length. */
  readonly residual: number
  readonly iterations: number
  readonly converged: boolean
}

/** No balance was found, or there is none; `reason` is a sentence for a person. */
export interface LineFailure {
  readonly state: 'failed'
  readonly reason: string
  readonly residual: number
  readonly iterations: number
  readonly converged: false
}

export type LineResult = LineSolution | LineFailure

export function failure(reason: string, residual = 0, iterations = 0): LineFailure {
  return { state: 'failed', reason, residual, iterations, converged: false }
}
