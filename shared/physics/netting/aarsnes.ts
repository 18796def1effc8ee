import type { ScreenCoefficient, SolidityRange } from './screen-coefficient'

/** Solidity of the tests; speeds up to about 1 m/s. */
export const aarsnesRange: SolidityRange = { least: 0.13, most: 0.35 }

/**
 * Drag and lift of a panel of netting, screen model of Aarsnes, Rudi and Loland.
 *
 * Cd = 0.04 + (-0.04 + Sn - 1.24 Sn² + 13.7 Sn³) cos α
 * Cl = (0.57 Sn - 3.54 Sn² + 10.1 Sn³) sin 2α
 *
 * @param solidity solid share Sn [-]; fitted for 0.13 to 0.35
 * @param alphaRad angle between the flow and the panel's normal [rad], 0 face-on, to π/2
 * @returns coefficients on the outline area, with F = ½ρ C A U²
 * @source Aarsnes, Rudi & Loland 1990, Current forces on cage, net deflection; coefficients as restated in Cheng et
 *   al. 2020, Aquacult. Environ. Interact. 12:361-376, model S1
 */
export function aarsnes(solidity: number, alphaRad: number): ScreenCoefficient {
  const s = solidity
  return {
    cd: 0.04 + (-0.04 + s - 1.24 * s ** 2 + 13.7 * s ** 3) * Math.cos(alphaRad),
    cl: (0.57 * s - 3.54 * s ** 2 + 10.1 * s ** 3) * Math.sin(2 * alphaRad),
  }
}
