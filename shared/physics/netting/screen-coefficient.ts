/** Drag and lift coefficients of a panel of netting on its outline area. */
export interface ScreenCoefficient {
  /** Along the flow. */
  readonly cd: number
  /** Across the flow, towards the side where the panel's downstream normal points. */
  readonly cl: number
}

/** Range of solidity over which a screen model was fitted. */
export interface SolidityRange {
  readonly least: number
  readonly most: number
}

export const isWithin = (range: SolidityRange, solidity: number) =>
  solidity >= range.least && solidity <= range.most
