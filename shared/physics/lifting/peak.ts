import { gravity } from '@shared/physics/constants'
import { haulingPull, heavingSpeed, leavingWaterPull } from './haul'

/** A haul from the bed to the rail. */
export interface WholeHaul {
  /** Submerged weight of pot, ballast and bait [N]. */
  readonly wetWeightN: number
  readonly potKg: number
  readonly catchKg: number
  readonly drainedWaterKg: number
  readonly planDragAreaM2: number
  readonly haulMps: number
  readonly waves?: { readonly heightM: number; readonly periodS: number }
  readonly depthM: number
  readonly ropeWetWeightNpm: number
  readonly ropeDiameterM: number
  readonly waterDensity: number
  /** Jerk of the boat, as a factor on the load. */
  readonly jerk: number
  /** Suction of the bed, as a factor on the submerged weight; 1 on anything but mud and silt. */
  readonly breakout: number
}

type HaulStage = 'breaking out' | 'coming up' | 'leaving the water'

/** Pull on the rope at each stage of a haul. */
export interface HaulLoads {
  readonly breakingOutN: number
  readonly comingUpN: number
  readonly leavingWaterN: number
  readonly peakN: number
  /** The peak as the mass that would hang as heavily [kg]. */
  readonly peakKg: number
  readonly stage: HaulStage
}

/**
 * Greatest pull on the rope over a haul.
 *
 * Breaking out: suction times W, with the rope's weight; coming up: `haulingPull` at the speed of hauling plus the
 * boat's heave, times the jerk on W; leaving the water: `leavingWaterPull`, usually the peak. The catch is near-neutral
 * in water and counts only above it.
 *
 * @param haul pot, rope, speeds and factors
 * @returns pull at each stage [N] and which is the peak
 * @source steady balance of forces; jerk and suction factors are judgement
 */
export function haulLoads(haul: WholeHaul): HaulLoads {
  const speedMps = haul.waves
    ? heavingSpeed(haul.haulMps, haul.waves.heightM, haul.waves.periodS)
    : haul.haulMps
  const ropeWeight = haul.ropeWetWeightNpm * haul.depthM
  const breakingOutN = haul.breakout * haul.wetWeightN + ropeWeight
  const comingUpN =
    haulingPull({ ...haul, speedMps, ropeLengthM: haul.depthM }) + (haul.jerk - 1) * haul.wetWeightN
  const leavingWaterN = leavingWaterPull(haul.potKg, haul.catchKg, haul.drainedWaterKg, haul.jerk)
  const stages: readonly (readonly [HaulStage, number])[] = [
    ['leaving the water', leavingWaterN],
    ['coming up', comingUpN],
    ['breaking out', breakingOutN],
  ]
  const [stage, peakN] = stages.reduce((peak, next) => (next[1] > peak[1] ? next : peak))
  return { breakingOutN, comingUpN, leavingWaterN, peakN, peakKg: peakN / gravity, stage }
}
