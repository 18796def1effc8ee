import { elasticCatenary, type Catenary } from '@shared/physics/catenary/elastic-catenary'
import { gravity } from '@shared/physics/constants'
import { floatDraft, netBuoyancy } from '@shared/physics/float/float'
import type { FloatBody } from '@shared/physics/float/float-body'
import { solveLine, type LineProblem, type LineSolution } from '@shared/physics/line/line'
import { pullUnderCurrent } from '@shared/physics/line/pull-under'
import {
  straightRopeDrag,
  strummingAmplification,
  strummingFrequency,
  towedGearDrag,
} from '@shared/physics/rope/drag'
import { criticalAngle, dragCatenary, straightLine } from '@shared/physics/rope/exact-shapes'
import { ropeBreakingStrength, ropeSafeLoad } from '@shared/physics/rope/strength'
import { ropeWetWeight } from '@shared/physics/rope/weight'
import { numberInput as n, type ModelInputs, type ModelRegistry } from '@shared/schema/vector'

const sphere = (diameterM: number, massKg: number): FloatBody => ({
  shape: 'sphere',
  diameterM,
  massKg,
  cd: 0,
  cdAwash: 0,
})

const straight = (i: ModelInputs) => {
  const density = n(i, 'water_density_kg_m3')
  const radius = n(i, 'ball_radius_m')
  const drag = 0.5 * density * n(i, 'drag_coefficient') * Math.PI * radius ** 2 * n(i, 'speed_m_s') ** 2
  return straightLine(n(i, 'line_length_m'), netBuoyancy(sphere(2 * radius, 0), density), drag)
}

const dragCurve = (i: ModelInputs) =>
  dragCatenary(
    n(i, 'tension_N'),
    n(i, 'normal_drag_per_m_when_normal_N_m'),
    n(i, 'arc_length_from_normal_point_m'),
  )

/** A float whose drag or drag area is given, on a rope made fast at the bed. */
function problem(
  i: ModelInputs,
  current: Pick<LineProblem, 'profile' | 'surfaceCurrentMps'>,
  float: FloatBody,
): LineProblem {
  return {
    ...current,
    float,
    depthM: n(i, 'depth_m'),
    ropeLengthM: n(i, 'rope_length_m'),
    ropeDiameterM: n(i, 'rope_diameter_m'),
    ropeWetWeightNpm: n(i, 'rope_submerged_weight_N_m'),
    cdn: n(i, 'Cd_normal'),
    cdt: n(i, 'Cd_tangential_on_d_L'),
    waterDensity: n(i, 'water_density_kg_m3'),
    clumps: [],
    potHeightM: 0,
  }
}

// Larger than any load of the vectors: the float stays at the surface.
const ampleBuoyancyN = 1e5

const atSurface = (i: ModelInputs) => {
  const speed = n(i, 'surface_current_m_s')
  const dragAreaM2 = (2 * n(i, 'float_drag_N')) / (n(i, 'water_density_kg_m3') * speed ** 2)
  const profile = i['profile'] === 'power7' ? 'power' : 'uniform'
  const float: FloatBody = { shape: 'lumped', netBuoyancyN: ampleBuoyancyN, dragAreaM2 }
  return solved(problem(i, { profile, surfaceCurrentMps: speed }, float))
}

const lumped = (i: ModelInputs): FloatBody => ({
  shape: 'lumped',
  netBuoyancyN: n(i, 'float_net_buoyancy_N'),
  dragAreaM2: n(i, 'float_CdA_m2'),
})

const sunk = (i: ModelInputs) =>
  solved(problem(i, { profile: 'uniform', surfaceCurrentMps: n(i, 'uniform_current_m_s') }, lumped(i)))

function solved(line: LineProblem): LineSolution {
  const result = solveLine(line)
  if (result.state === 'failed') throw new RangeError(result.reason)
  return result
}

function pullUnder(i: ModelInputs): number {
  const found = pullUnderCurrent(problem(i, { profile: 'uniform', surfaceCurrentMps: 0 }, lumped(i)))
  if (!found?.converged || found.beyond) throw new RangeError('the float is not drawn under')
  return found.currentMps
}

const catenary = (i: ModelInputs, onBed: boolean, wetWeightNpm = n(i, 'submerged_weight_N_m')): Catenary =>
  elasticCatenary({
    spanM: n(i, 'span_m'),
    riseM: n(i, 'rise_m'),
    lengthM: n(i, 'length_m'),
    stiffnessN: n(i, 'EA_N'),
    wetWeightNpm,
    onBed,
  })

function chainFairlead(i: ModelInputs): number {
  const displaced = (Math.PI / 4) * n(i, 'equivalent_diameter_m') ** 2 * n(i, 'water_density_kg_m3')
  const { horizontalN, verticalTopN } = catenary(i, true, gravity * (n(i, 'chain_mass_kg_m') - displaced))
  return Math.hypot(horizontalN, verticalTopN)
}

/** Rope, float, the line between them, and the catenary. */
export const lineModels: ModelRegistry = {
  'rope.drag-fridman-table': (i) => straightRopeDrag(n(i, 'angle_of_attack_deg')),
  'rope.tow-drag-regression': (i) => towedGearDrag(n(i, 'rope_length_m'), n(i, 'has_float_0_or_1') === 1),
  'rope.straight-offset': (i) => straight(i).offsetM,
  'rope.straight-dip': (i) => straight(i).dipM,
  'rope.straight-tension': (i) => straight(i).tensionN,
  'rope.drag-catenary-cross': (i) => dragCurve(i).acrossM,
  'rope.drag-catenary-along': (i) => dragCurve(i).alongM,
  'rope.critical-angle': (i) =>
    (criticalAngle(n(i, 'submerged_weight_per_m_N_m'), n(i, 'normal_drag_per_m_N_m')) * 180) / Math.PI,
  'rope.strumming-frequency': (i) => strummingFrequency(n(i, 'speed_m_s'), n(i, 'diameter_m')),
  'rope.strumming-amplification': (i) => strummingAmplification(n(i, 'amplitude_over_diameter')),
  'rope.breaking-strength-pp': (i) => ropeBreakingStrength('PP', n(i, 'diameter_mm')),
  'rope.safe-load-pp': (i) => ropeSafeLoad(n(i, 'breaking_kN'), n(i, 'safety_factor')),
  'rope.submerged-weight': (i) =>
    ropeWetWeight(
      n(i, 'mass_per_m_kg'),
      n(i, 'fibre_density_kg_m3'),
      n(i, 'water_density_kg_m3'),
      n(i, 'length_m'),
    ),
  'line.surface-float-vertical': (i) => atSurface(i).verticalN,
  'line.surface-float-offset': (i) => atSurface(i).offsetM,
  'line.surface-float-pot-horizontal': (i) => atSurface(i).potHorizontalN,
  'line.surface-float-pot-uplift': (i) => atSurface(i).potUpliftN,
  'line.sunk-float-dip': (i) => sunk(i).dipM,
  'line.sunk-float-pot-uplift': (i) => sunk(i).potUpliftN,
  'line.pull-under-current': pullUnder,
  'float.sphere-draft': (i) =>
    floatDraft(sphere(n(i, 'diameter_m'), 0), n(i, 'vertical_load_N'), n(i, 'water_density_kg_m3')),
  'float.sphere-net-buoyancy': (i) =>
    netBuoyancy(sphere(n(i, 'diameter_m'), n(i, 'mass_kg')), n(i, 'water_density_kg_m3')),
  'catenary.grounded-horizontal': (i) => catenary(i, true).horizontalN,
  'catenary.grounded-length': (i) => catenary(i, true).groundedM,
  'catenary.free-horizontal': (i) => catenary(i, false).horizontalN,
  'catenary.free-vertical': (i) => catenary(i, false).verticalTopN,
  'catenary.chain-fairlead': chainFairlead,
}
