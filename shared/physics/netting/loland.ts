import type { ScreenCoefficient, SolidityRange } from './screen-coefficient'

/** Solidity of the tests; speeds up to about 1 m/s. */
export const lolandRange: SolidityRange = { least: 0.13, most: 0.35 }

/**
 * Drag and lift of a panel of netting, Loland's own refit.
 *
 * Cd = 0.04 + (-0.04 + 0.33 Sn + 6.54 Sn² - 4.88 Sn³) cos α
 * Cl = (-0.05 Sn + 2.3 Sn² - 1.76 Sn³) sin 2α
 *
 * @param solidity solid share Sn [-]; fitted for 0.13 to 0.35
 * @param alphaRad angle between the flow and the panel's normal [rad], 0 face-on, to π/2
 * @returns coefficients on the outline area, with F = ½ρ C A U²
 * @source Loland 1991, thesis, Norwegian Institute of Technology; coefficients as restated in Cheng et al. 2020,
 *   Aquacult. Environ. Interact. 12:361-376, model S2
 */
export function loland(solidity: number, alphaRad: number): ScreenCoefficient {
  const s = solidity
  return {
    cd: 0.04 + (-0.04 + 0.33 * s + 6.54 * s ** 2 - 4.88 * s ** 3) * Math.cos(alphaRad),
    cl: (-0.05 * s + 2.3 * s ** 2 - 1.76 * s ** 3) * Math.sin(2 * alphaRad),
  }
}
