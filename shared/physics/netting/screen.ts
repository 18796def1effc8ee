import { bluffDrag } from '@shared/physics/bodies/bluff'
import { aarsnes, aarsnesRange } from './aarsnes'
import { kristiansenFaltinsen, kristiansenFaltinsenRange, type TwineFlow } from './kristiansen-faltinsen'
import { loland, lolandRange } from './loland'
import type { ScreenCoefficient, SolidityRange } from './screen-coefficient'

export const screenModels = ['aarsnes', 'loland', 'kristiansen-faltinsen'] as const
export type ScreenModel = (typeof screenModels)[number]

const ranges: Readonly<Record<ScreenModel, SolidityRange>> = {
  aarsnes: aarsnesRange,
  loland: lolandRange,
  'kristiansen-faltinsen': kristiansenFaltinsenRange,
}

/** Range of solidity of a screen model, to report with a finding that leaves it. */
export const screenRange = (model: ScreenModel): SolidityRange => ranges[model]

/**
 * Drag and lift of a panel by any screen model, over the whole range of solidity.
 *
 * Above 0.35, where the cubic fits were not tested, the coefficient grows as Sn (2 - Sn)/(1 - Sn)² does in the model
 * of Kristiansen and Faltinsen, and is never more than that of a solid plate.
 *
 * @param model    one of the three screen models
 * @param flow     solidity, speed, twine diameter, viscosity
 * @param alphaRad angle between the flow and the panel's normal [rad], 0 to π/2
 * @returns coefficients on the outline area; drag at least 0
 * @source the three models as restated in Cheng et al. 2020, Aquacult. Environ. Interact. 12:361-376; the extension
 *   above 0.35 is judgement
 */
export function screenCoefficient(model: ScreenModel, flow: TwineFlow, alphaRad: number): ScreenCoefficient {
  const tested = Math.min(flow.solidity, aarsnesRange.most)
  const { cd, cl } = atTestedSolidity(model, { ...flow, solidity: tested }, alphaRad)
  const growth = flow.solidity > tested ? blockage(flow.solidity) / blockage(tested) : 1
  const plate = bluffDrag('square-plate')
  const extended = Math.min(Math.max(cd, 0) * growth, plate)
  return { cd: extended, cl: cd > 0 ? (cl * extended) / cd : 0 }
}

function atTestedSolidity(model: ScreenModel, flow: TwineFlow, alphaRad: number): ScreenCoefficient {
  if (model === 'aarsnes') return aarsnes(flow.solidity, alphaRad)
  if (model === 'loland') return loland(flow.solidity, alphaRad)
  return kristiansenFaltinsen(flow, alphaRad)
}

const blockage = (solidity: number) => {
  const open = Math.max(1 - solidity, 1e-3)
  return (solidity * (2 - solidity)) / open ** 2
}

/**
 * Drag and lift of a panel, taken within the spread of the three screen models.
 *
 * At 0 the chosen model is used as it is; towards 1 it moves to the highest drag of the three, towards -1 to the
 * lowest. Lift keeps its ratio to drag.
 *
 * @param model    the chosen model
 * @param flow     solidity, speed, twine diameter, viscosity
 * @param alphaRad angle between the flow and the panel's normal [rad], 0 to π/2
 * @param spread   where in the spread, -1 to 1
 * @returns coefficients on the outline area
 */
export function screenWithin(
  model: ScreenModel,
  flow: TwineFlow,
  alphaRad: number,
  spread: number,
): ScreenCoefficient {
  const chosen = screenCoefficient(model, flow, alphaRad)
  if (spread === 0) return chosen
  let end = chosen.cd
  for (const other of screenModels) {
    const { cd } = screenCoefficient(other, flow, alphaRad)
    end = spread > 0 ? Math.max(end, cd) : Math.min(end, cd)
  }
  const cd = chosen.cd + Math.abs(spread) * (end - chosen.cd)
  return { cd, cl: chosen.cd > 0 ? (chosen.cl * cd) / chosen.cd : 0 }
}
