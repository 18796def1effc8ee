import { haulingPull, heavingSpeed, leavingWaterPull } from '@shared/physics/lifting/haul'
import { liftGuideline, liftZones, type Lifter, type LiftReach } from '@shared/physics/lifting/guideline'
import { recommendedLift } from '@shared/physics/lifting/niosh'
import { barMass, submergedShare } from '@shared/physics/material/bar-mass'
import { rateOfTheDay, tidalExcursion } from '@shared/physics/tide/rate-of-the-day'
import { fiftyNinetyRate, sineRate, twelfthsHeight } from '@shared/physics/tide/rules-of-thumb'
import { seaWaterDensityAt } from '@shared/physics/water/density'
import { relativeDepth, waveCelerity, waveLength } from '@shared/physics/waves/dispersion'
import { bedExcursion, bedOrbitalSpeed, waveMotion, type Wave } from '@shared/physics/waves/orbital'
import { waveCurrentForce } from '@shared/physics/waves/wave-current-force'
import { numberInput as n, textInput, type ModelInputs, type ModelRegistry } from '@shared/schema/vector'
import { radians } from './degrees'

const wave = (i: ModelInputs): Wave => ({ heightM: n(i, 'height_m'), periodS: n(i, 'period_s') })

const motion = (i: ModelInputs) =>
  waveMotion(wave(i), n(i, 'depth_m'), n(i, 'z_below_swl_m'), radians(n(i, 'theta_deg')))

function guideline(i: ModelInputs, lifter: Lifter): number {
  const named = textInput(i, 'zone')
  const zone = liftZones.find((known) => named.includes(known))
  const reach = textInput(i, 'reach')
  if (!zone || !isReach(reach)) throw new RangeError(`no guideline for ${named}, ${reach}`)
  return liftGuideline(lifter, zone, reach)
}

const isReach = (reach: string): reach is LiftReach => reach === 'close to body' || reach === 'arms extended'

/** Waves, tide, sea water, materials and lifting. */
export const waterAndLiftingModels: ModelRegistry = {
  'wave.length': (i) => waveLength(n(i, 'period_s'), n(i, 'depth_m')),
  'wave.celerity': (i) => waveCelerity(n(i, 'period_s'), n(i, 'depth_m')),
  'wave.relative-depth': (i) => relativeDepth(n(i, 'd_over_L0')),
  'wave.horizontal-speed': (i) => motion(i).horizontalMps,
  'wave.horizontal-acceleration': (i) => motion(i).horizontalMps2,
  'wave.excursion-bed': (i) => bedExcursion(wave(i), n(i, 'depth_m')),
  'wave.bed-orbital-speed': (i) => bedOrbitalSpeed(wave(i), n(i, 'depth_m')),
  'wave.current-wave-force-max': (i) =>
    waveCurrentForce({
      currentMps: n(i, 'current_m_s'),
      orbitalMps: n(i, 'orbital_amplitude_m_s'),
      periodS: n(i, 'period_s'),
      dragAreaM2: n(i, 'CdA_m2'),
      inertiaVolumeM3: n(i, 'CmV_m3'),
      waterDensity: n(i, 'water_density_kg_m3'),
    }),
  'water.density-eos80': (i) => seaWaterDensityAt(n(i, 'salinity_psu'), n(i, 'temperature_C')),
  'material.steel-bar-mass': (i) => barMass(n(i, 'diameter_mm') / 1000, n(i, 'density_kg_m3')),
  'material.submerged-fraction': (i) => submergedShare(n(i, 'density_kg_m3'), n(i, 'water_density_kg_m3')),
  'tide.rule-of-twelfths': (i) => twelfthsHeight(n(i, 'range_m'), n(i, 'hours_after_LW')),
  'tide.rule-fifty-ninety': (i) => fiftyNinetyRate(n(i, 'max_rate_kn'), n(i, 'hours_after_slack')),
  'tide.stream-sine': (i) => sineRate(n(i, 'max_rate_m_s'), n(i, 'hours_after_slack')),
  'tide.stream-interpolated': (i) =>
    rateOfTheDay(
      n(i, 'range_m'),
      { rangeM: n(i, 'spring_range_m'), rate: n(i, 'spring_rate_kn') },
      { rangeM: n(i, 'neap_range_m'), rate: n(i, 'neap_rate_kn') },
    ),
  'tide.excursion': (i) => tidalExcursion(n(i, 'max_rate_m_s'), n(i, 'period_s')),
  'lift.hauling-tension': (i) =>
    haulingPull({
      wetWeightN: n(i, 'submerged_weight_N'),
      planDragAreaM2: n(i, 'plan_CdA_m2'),
      speedMps: n(i, 'haul_speed_m_s'),
      ropeWetWeightNpm: n(i, 'rope_submerged_weight_N_m'),
      ropeLengthM: n(i, 'rope_length_m'),
      ropeDiameterM: n(i, 'rope_diameter_m'),
      waterDensity: n(i, 'water_density_kg_m3'),
    }),
  'lift.heave-rope-speed': (i) =>
    heavingSpeed(n(i, 'haul_speed_m_s'), n(i, 'wave_height_m'), n(i, 'period_s')),
  'lift.leaving-water': (i) =>
    leavingWaterPull(
      n(i, 'pot_mass_kg'),
      n(i, 'catch_mass_kg'),
      n(i, 'entrained_water_kg'),
      n(i, 'dynamic_factor'),
    ),
  'lift.niosh-limit': (i) =>
    recommendedLift({
      reachCm: n(i, 'H_cm'),
      heightCm: n(i, 'V_cm'),
      travelCm: n(i, 'D_cm'),
      twistDeg: n(i, 'A_deg'),
      frequencyFactor: n(i, 'FM'),
      gripFactor: n(i, 'CM'),
    }),
  'lift.guideline-men': (i) => guideline(i, 'men'),
  'lift.guideline-women': (i) => guideline(i, 'women'),
}
