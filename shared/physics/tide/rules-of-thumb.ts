import { interpolate } from '@shared/numerics/interpolation'
import { lunarTidePeriodH } from '@shared/physics/constants'

const twelfths = [
  [0, 0],
  [1, 1],
  [2, 3],
  [3, 6],
  [4, 9],
  [5, 11],
  [6, 12],
] as const

/**
 * Height of the tide above low water by the rule of twelfths.
 *
 * 1, 2, 3, 3, 2, 1 twelfths of the range in the six tidal hours; straight lines between.
 *
 * @param rangeM       range of the tide [m]
 * @param hoursAfterLw tidal hours after low water, 0 to 6
 * @returns height above low water [m]; within 2 % of the range of a cosine
 * @source rule of twelfths (Bowditch, The American Practical Navigator)
 */
export function twelfthsHeight(rangeM: number, hoursAfterLw: number): number {
  return (rangeM * interpolate(twelfths, hoursAfterLw)) / 12
}

const fiftyNinety = [
  [0, 0],
  [1, 0.5],
  [2, 0.9],
  [3, 1],
  [4, 0.9],
  [5, 0.5],
  [6, 0],
] as const

/**
 * Rate of the stream by the 50/90 rule.
 *
 * 0, 50, 90, 100, 90, 50, 0 % of the greatest rate at 0 to 6 tidal hours after slack; straight lines between.
 *
 * @param maxRate         greatest rate, any unit of speed
 * @param hoursAfterSlack tidal hours after slack, 0 to 6
 * @returns rate in the same unit
 * @source 50/90 rule of tidal streams
 */
export function fiftyNinetyRate(maxRate: number, hoursAfterSlack: number): number {
  return maxRate * interpolate(fiftyNinety, hoursAfterSlack)
}

/**
 * Rate of a half-daily stream that runs as a sine.
 *
 * U = U_max sin(π t/6.2103 h), half the period of M2.
 *
 * @param maxRate         greatest rate, any unit of speed
 * @param hoursAfterSlack hours after slack
 * @returns rate in the same unit, negative when it has turned
 * @source harmonic M2 stream, period 12.4206 h
 */
export function sineRate(maxRate: number, hoursAfterSlack: number): number {
  return maxRate * Math.sin((2 * Math.PI * hoursAfterSlack) / lunarTidePeriodH)
}
