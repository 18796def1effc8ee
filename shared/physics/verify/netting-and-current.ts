import { frictionFactor } from '@shared/physics/bed/friction-table'
import { slopeHolding } from '@shared/physics/bed/slope'
import { cylinderDrag } from '@shared/physics/bodies/cylinder'
import { sphereDrag } from '@shared/physics/bodies/sphere'
import { bedDragCoefficient } from '@shared/physics/current/bed-roughness'
import { meanSquareOverPanel } from '@shared/physics/current/mean-square'
import { frictionVelocity, logLawSpeed, speedAt, speedFromDepthMean } from '@shared/physics/current/speed'
import { aarsnes } from '@shared/physics/netting/aarsnes'
import {
  kristiansenFaltinsen,
  twineDrag,
  twineReynolds,
  type TwineFlow,
} from '@shared/physics/netting/kristiansen-faltinsen'
import { loland } from '@shared/physics/netting/loland'
import { squareNettingMass } from '@shared/physics/netting/mass'
import { diamondMeshSolidity, squareMeshSolidity } from '@shared/physics/netting/solidity'
import { angledWake, lolandWake } from '@shared/physics/netting/wake'
import { numberInput as n, textInput, type ModelInputs, type ModelRegistry } from '@shared/schema/vector'
import { radians } from './degrees'

const twineFlow = (i: ModelInputs): TwineFlow => ({
  solidity: n(i, 'solidity'),
  speedMps: n(i, 'speed_m_s'),
  twineDiameterM: n(i, 'twine_diameter_m'),
  viscosity: n(i, 'kinematic_viscosity_m2_s'),
})
const alpha = (i: ModelInputs) => radians(n(i, 'alpha_deg'))

/** Netting, bodies, current and bed. */
export const nettingAndCurrentModels: ModelRegistry = {
  'netting.solidity-square': (i) => squareMeshSolidity(n(i, 'twine_diameter_m'), n(i, 'bar_length_m')),
  'netting.solidity-diamond': (i) =>
    diamondMeshSolidity(n(i, 'twine_diameter_m'), n(i, 'bar_length_m'), n(i, 'hanging_ratio_E1')),
  'netting.drag-aarsnes': (i) => aarsnes(n(i, 'solidity'), alpha(i)).cd,
  'netting.lift-aarsnes': (i) => aarsnes(n(i, 'solidity'), alpha(i)).cl,
  'netting.drag-loland': (i) => loland(n(i, 'solidity'), alpha(i)).cd,
  'netting.lift-loland': (i) => loland(n(i, 'solidity'), alpha(i)).cl,
  'netting.twine-drag-kristiansen': (i) => twineDrag(twineReynolds(twineFlow(i))),
  'netting.drag-kristiansen': (i) => kristiansenFaltinsen(twineFlow(i), alpha(i)).cd,
  'netting.lift-kristiansen': (i) => kristiansenFaltinsen(twineFlow(i), alpha(i)).cl,
  'netting.wake-loland': (i) => lolandWake(aarsnes(n(i, 'solidity'), alpha(i)).cd),
  'netting.wake-angle': (i) => angledWake(n(i, 'solidity'), radians(n(i, 'theta_deg'))),
  'netting.mass-square': (i) => squareNettingMass(n(i, 'Rtex_g_km'), n(i, 'bar_length_m')),
  'body.cylinder-drag': (i) => cylinderDrag(n(i, 'reynolds_number')),
  'body.sphere-drag': (i) => sphereDrag(n(i, 'reynolds_number')),
  'current.bed-drag-cd100': (i) => bedDragCoefficient(n(i, 'z0_m')),
  'current.log-law': (i) => logLawSpeed(n(i, 'u_ref_m_s'), n(i, 'z_ref_m'), n(i, 'z_m'), n(i, 'z0_m')),
  'current.power-law-surface': (i) =>
    speedAt(
      { profile: 'power', surfaceCurrentMps: n(i, 'surface_speed_m_s'), depthM: n(i, 'depth_m') },
      n(i, 'z_m'),
    ),
  'current.power-law-depth-mean': (i) =>
    speedFromDepthMean(n(i, 'depth_mean_speed_m_s'), n(i, 'depth_m'), n(i, 'z_m')),
  'current.friction-velocity': (i) =>
    frictionVelocity(n(i, 'depth_mean_speed_m_s'), n(i, 'depth_m'), n(i, 'z0_m')),
  'current.mean-square-over-panel': (i) =>
    meanSquareOverPanel(n(i, 'surface_speed_m_s'), n(i, 'depth_m'), n(i, 'panel_height_m')),
  'bed.friction-table': (i) => frictionFactor(textInput(i, 'pair')),
  'holding.slope': (i) =>
    slopeHolding(n(i, 'submerged_weight_N'), n(i, 'friction_coefficient'), radians(n(i, 'slope_deg'))),
}
