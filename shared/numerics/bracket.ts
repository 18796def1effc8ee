/** Two points between which a function changes sign. */
export interface Bracket {
  readonly from: number
  readonly to: number
  readonly endValues: readonly [number, number]
}

/**
 * Widens an interval upwards until a function changes sign in it.
 *
 * The upper end grows by the factor each time; the lower end follows, so the bracket stays as narrow as it can.
 *
 * @param f      function of one variable
 * @param from   lower end, where the search starts
 * @param to     first upper end, above `from`
 * @param limit  the search goes no further than this
 * @param factor growth of the step, above 1
 * @returns the bracket, or `undefined` when no change of sign is met up to the limit
 */
export function bracketUpwards(
  f: (x: number) => number,
  from: number,
  to: number,
  limit: number,
  factor = 2,
): Bracket | undefined {
  let low = from
  let lowValue = f(low)
  let high = Math.min(to, limit)
  let step = high - low
  while (high > low) {
    const highValue = f(high)
    if (lowValue < 0 !== highValue < 0) return { from: low, to: high, endValues: [lowValue, highValue] }
    low = high
    lowValue = highValue
    step *= factor
    high = Math.min(high + step, limit)
  }
  return undefined
}
