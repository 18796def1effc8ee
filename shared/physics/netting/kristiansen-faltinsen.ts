import type { ScreenCoefficient, SolidityRange } from './screen-coefficient'

/** Solidity the model handles; it loses accuracy beyond 60 degrees from the normal. */
export const kristiansenFaltinsenRange: SolidityRange = { least: 0, most: 0.5 }

/** Reynolds numbers of the twine over which the cylinder curve was fitted. */
const twineReynoldsRange = { least: 10 ** 1.5, most: 1e4 } as const

// The polynomial is badly conditioned: all printed digits matter.
const cylinderPolynomial = [
  -78.46675, 254.73873, -327.8864, 223.64577, -87.92234, 20.00769, -2.44894, 0.12479,
] as const

/** The flow past a twine of a screen. */
export interface TwineFlow {
  readonly solidity: number
  /** Speed of the undisturbed water [m/s]. */
  readonly speedMps: number
  readonly twineDiameterM: number
  /** Kinematic viscosity [m²/s]. */
  readonly viscosity: number
}

/**
 * Reynolds number of a twine in the gaps of its screen.
 *
 * Re = U d / (ν (1 - Sn))
 *
 * @returns Reynolds number [-]; infinite for a closed panel
 * @source Kristiansen & Faltinsen 2012, J. Fluids Struct. 34:218-235
 */
export function twineReynolds({ solidity, speedMps, twineDiameterM, viscosity }: TwineFlow): number {
  return (speedMps * twineDiameterM) / (viscosity * (1 - solidity))
}

/**
 * Drag coefficient of a twine taken as a circular cylinder.
 *
 * A polynomial of the seventh degree in x = log10 Re; outside 10^1.5 to 10^4 the end of the range is used.
 *
 * @param reynolds Reynolds number of the twine [-], at least 0
 * @returns drag coefficient on the twine's projected area [-]
 * @source Kristiansen & Faltinsen 2012, J. Fluids Struct. 34:218-235, as restated in Cheng et al. 2020, model S3
 */
export function twineDrag(reynolds: number): number {
  const { least, most } = twineReynoldsRange
  const x = Math.log10(Math.min(most, Math.max(least, reynolds)))
  return cylinderPolynomial.reduceRight<number>((sum, c) => sum * x + c, 0)
}

/**
 * Drag and lift of a panel of netting, screen model of Kristiansen and Faltinsen.
 *
 * Cd0 = Cc Sn (2 - Sn) / (2 (1 - Sn)²), Cd = Cd0 (0.9 cos α + 0.1 cos 3α)
 * Cn = Cc Sn / (2 (1 - Sn)²), Ct45 = π Cn / (8 + Cn), Cl45 = (Cd0/2 - Ct45)/√2, Cl = Cl45 (sin 2α + 0.1 sin 4α)
 *
 * @param flow     solidity up to about 0.5, speed, twine diameter and viscosity
 * @param alphaRad angle between the flow and the panel's normal [rad]; accurate up to about π/3
 * @returns coefficients on the outline area, with F = ½ρ C A U²
 * @source Kristiansen & Faltinsen 2012, J. Fluids Struct. 34:218-235, as restated in Cheng et al. 2020, model S3
 */
export function kristiansenFaltinsen(flow: TwineFlow, alphaRad: number): ScreenCoefficient {
  const s = flow.solidity
  const normal = (twineDrag(twineReynolds(flow)) * s) / (2 * (1 - s) ** 2)
  const faceOn = normal * (2 - s)
  const tangential = (Math.PI * normal) / (8 + normal)
  const liftAt45 = (0.5 * faceOn - tangential) / Math.SQRT2
  return {
    cd: faceOn * (0.9 * Math.cos(alphaRad) + 0.1 * Math.cos(3 * alphaRad)),
    cl: liftAt45 * (Math.sin(2 * alphaRad) + 0.1 * Math.sin(4 * alphaRad)),
  }
}
