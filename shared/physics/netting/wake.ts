/** Loland's factor of the slowing behind a panel. */
const lolandWakeFactor = 0.46

/** However many panels stand upstream, no more shelter than this is counted. */
const leastSpeedLeft = 0.5

/**
 * Speed left behind a panel of netting face-on to the current.
 *
 * r = 1 - 0.46 Cd, the drag behind it falls with r².
 *
 * @param cd     drag coefficient of the panel upstream, on its outline [-]
 * @param factor slowing for each unit of Cd [-]
 * @returns speed behind the panel over the speed before it [-], at least 0
 * @source Loland 1991, thesis, Norwegian Institute of Technology (from memory)
 */
export function lolandWake(cd: number, factor = lolandWakeFactor): number {
  return Math.max(0, 1 - factor * cd)
}

/**
 * Speed left behind a panel at an angle to the current.
 *
 * r = max(0, (cos θ + 0.05 - 0.38 Sn)/(cos θ + 0.05))
 *
 * @param solidity solid share of the panel Sn [-]
 * @param thetaRad angle between the flow and the panel's normal [rad], 0 to π/2
 * @returns speed behind the panel over the speed before it [-]
 * @source Cheng et al. 2020, Aquacult. Environ. Interact. 12:361-376
 */
export function angledWake(solidity: number, thetaRad: number): number {
  const open = Math.cos(thetaRad) + 0.05
  return Math.max(0, (open - 0.38 * solidity) / open)
}

/**
 * Speed left behind several panels in line: the ratios multiplied, never below one half.
 *
 * @param ratio  speed left behind one panel [-]
 * @param panels how many stand upstream
 * @source product of the ratios of Loland 1991; the floor is judgement
 */
export function speedBehind(ratio: number, panels: number): number {
  return panels <= 0 ? 1 : Math.max(leastSpeedLeft, ratio ** panels)
}
