import { coefficientSet, defaultCoefficients } from '@shared/physics/coefficients'
import type { FlowBody } from '@shared/physics/holding/flow-body'
import { ringEdgeArm } from '@shared/physics/holding/edge-arm'
import { holdFactors, type Hold } from '@shared/physics/holding/factors'
import { plainSlideCurrent, plainTipCurrent } from '@shared/physics/holding/plain-current'
import { potDrag } from '@shared/physics/holding/pot-drag'
import { numberInput as n, type ModelInputs, type ModelRegistry } from '@shared/schema/vector'

const middle = coefficientSet(defaultCoefficients, 'middle')

/** Two panels of netting face-on, one behind the other. */
const twoPanels = (areaM2: number, solidity: number, heightM: number): FlowBody[] =>
  [0, 1].map((shadowed) => ({
    part: 'netting',
    kind: 'netting',
    areaM2,
    solidity,
    shadowed,
    centreHeightM: heightM / 2,
    topHeightM: heightM,
    volumeM3: 0,
  }))

const bluff = (part: 'frame' | 'bait', cd: number, areaM2: number, heightM: number): FlowBody => ({
  part,
  kind: 'bluff',
  cd,
  areaM2,
  shadowed: 0,
  centreHeightM: heightM / 2,
  topHeightM: heightM,
  volumeM3: 0,
})

/** A whole pot in a current: two panels, frame, bait and catch, with the rope's pull given. */
function chain(i: ModelInputs): Hold {
  const height = n(i, 'pot_height_m')
  const bodies = [
    ...twoPanels(n(i, 'pot_width_m') * height, n(i, 'solidity'), height),
    bluff('frame', 1.2, n(i, 'frame_projected_area_m2'), height),
    bluff('bait', 1, n(i, 'bait_and_catch_projected_area_m2'), height),
  ]
  const drag = potDrag(bodies, {
    current: {
      profile: 'power',
      surfaceCurrentMps: n(i, 'surface_current_m_s'),
      depthM: n(i, 'depth_m'),
    },
    waterDensity: n(i, 'water_density_kg_m3'),
    coefficients: middle,
  })
  const arm = n(i, 'edge_arm_b_m')
  return {
    wetWeightN: n(i, 'submerged_weight_N'),
    dragN: drag.dragN,
    dragMomentNm: drag.momentNm,
    liftN: 0,
    ropeHorizontalN: n(i, 'rope_horizontal_N'),
    ropeUpliftN: n(i, 'rope_uplift_N'),
    friction: n(i, 'friction_coefficient'),
    edgeArmM: arm,
    upliftArmM: arm,
    bridleHeightM: n(i, 'bridle_height_m'),
  }
}

const plainHold: Hold = {
  wetWeightN: 0,
  dragN: 0,
  dragMomentNm: 0,
  liftN: 0,
  ropeHorizontalN: 0,
  ropeUpliftN: 0,
  friction: 0,
  edgeArmM: 0,
  upliftArmM: 0,
  bridleHeightM: 0,
}

/** Holding: sliding and tipping, with and without a rope. */
export const holdingModels: ModelRegistry = {
  'netting.two-panel-drag': (i) =>
    potDrag(twoPanels(n(i, 'panel_area_m2'), n(i, 'solidity'), 1), {
      current: { profile: 'uniform', surfaceCurrentMps: n(i, 'speed_m_s'), depthM: 10 },
      waterDensity: n(i, 'water_density_kg_m3'),
      coefficients: middle,
    }).dragN,
  'holding.slide-current': (i) =>
    plainSlideCurrent(
      n(i, 'friction_coefficient'),
      n(i, 'submerged_weight_N'),
      n(i, 'CdA_m2'),
      n(i, 'ClA_m2'),
      n(i, 'water_density_kg_m3'),
    ),
  'holding.tip-current': (i) =>
    plainTipCurrent(
      n(i, 'submerged_weight_N'),
      n(i, 'edge_arm_b_m'),
      n(i, 'CdA_m2') * n(i, 'drag_height_zc_m'),
      n(i, 'ClA_m2') * n(i, 'lift_arm_bl_m'),
      n(i, 'water_density_kg_m3'),
    ),
  'holding.slide-factor': (i) =>
    holdFactors({
      ...plainHold,
      friction: n(i, 'friction_coefficient'),
      wetWeightN: n(i, 'submerged_weight_N'),
      dragN: n(i, 'drag_N'),
      ropeHorizontalN: n(i, 'rope_horizontal_N'),
      ropeUpliftN: n(i, 'rope_uplift_N'),
    }).slideFactor,
  'holding.tip-factor': (i) =>
    holdFactors({
      ...plainHold,
      wetWeightN: n(i, 'submerged_weight_N'),
      edgeArmM: n(i, 'edge_arm_b_m'),
      dragMomentNm: n(i, 'drag_N') * n(i, 'drag_height_zc_m'),
      ropeHorizontalN: n(i, 'rope_horizontal_N'),
      bridleHeightM: n(i, 'bridle_height_zt_m'),
      ropeUpliftN: n(i, 'rope_uplift_N'),
      upliftArmM: n(i, 'uplift_arm_xv_m'),
    }).tipFactor,
  'holding.tip-arm-feet': (i) => ringEdgeArm(n(i, 'radius_m'), n(i, 'feet')),
  'holding.chain-drag': (i) => chain(i).dragN,
  'holding.chain-slide-factor': (i) => holdFactors(chain(i)).slideFactor,
  'holding.chain-tip-factor': (i) => holdFactors(chain(i)).tipFactor,
}
