/** Range of the tide and greatest rate of the stream, at neaps or at springs. */
export interface RangeAndRate {
  readonly rangeM: number
  readonly rate: number
}

/**
 * Greatest rate of the stream on a day, from the day's range of tide.
 *
 * R = R_n + (R_s - R_n)(range - range_n)/(range_s - range_n), straight beyond both ends but never negative.
 *
 * @param rangeM range of the day [m]
 * @param spring range and rate at springs
 * @param neap   range and rate at neaps, with a smaller range
 * @returns rate in the unit given
 * @throws {RangeError} the spring range does not exceed the neap range
 * @source computation-of-rates diagram of tidal stream atlases (linear)
 */
export function rateOfTheDay(rangeM: number, spring: RangeAndRate, neap: RangeAndRate): number {
  if (!(spring.rangeM > neap.rangeM))
    throw new RangeError(`rateOfTheDay: spring range ${spring.rangeM} m must exceed ${neap.rangeM} m`)
  const share = (rangeM - neap.rangeM) / (spring.rangeM - neap.rangeM)
  return Math.max(0, neap.rate + (spring.rate - neap.rate) * share)
}

/**
 * Distance that water travels in half a cycle of a stream that runs as a sine.
 *
 * X = U_max T/π, T the full period.
 *
 * @param maxRateMps greatest rate [m/s]
 * @param periodS    full period [s]
 * @returns distance [m]
 * @source integral of the sine over half a period
 */
export function tidalExcursion(maxRateMps: number, periodS: number): number {
  return (maxRateMps * periodS) / Math.PI
}
