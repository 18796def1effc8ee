/**
 * Drag of netting face-on and along its plane, Fridman's form: the high bound among the models here.
 *
 * Cn = 3 Re*^-0.07 Sn with Re* = Re/(2 Sn), Ct = 0.1 Re^0.14 Sn, Re = U d/ν.
 *
 * @param reynolds Reynolds number of the twine in open water [-], > 0
 * @param solidity solid share [-], > 0
 * @returns coefficients on the outline area, across and along the panel
 * @throws {RangeError} Reynolds number or solidity not positive
 * @source Fridman 1973, as restated in Cheng et al. 2020, Aquacult. Environ. Interact. 12:361-376, model S4
 */
export function fridmanPanel(reynolds: number, solidity: number): { normal: number; tangential: number } {
  if (!(reynolds > 0 && solidity > 0))
    throw new RangeError(`fridmanPanel: Reynolds ${reynolds} and solidity ${solidity} must be positive`)
  return {
    normal: 3 * (reynolds / (2 * solidity)) ** -0.07 * solidity,
    tangential: 0.1 * reynolds ** 0.14 * solidity,
  }
}
