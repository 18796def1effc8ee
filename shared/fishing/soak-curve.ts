/** Rates of one pot: everything is relative to the number at which entry stops. */
export interface SoakRates {
  /** First entry rate over the number at which entry stops, s = a/K [1/h], > 0. */
  readonly drawPerH: number
  /** Decay of the bait k [1/h], ≥ 0. */
  readonly decayPerH: number
  /** Escape rate e [per crab per h], ≥ 0. */
  readonly escapePerH: number
}

/** The shape of catch against soak: equal steps from 0, as a share of a full pot. */
export interface SoakCurve {
  readonly stepH: number
  readonly share: Float64Array
}

const longestStepH = 0.05

/**
 * Relative catch against soak with fading bait, a pot that fills, and escape.
 *
 * dn/dt = s·exp(−k·t)·max(0, 1 − n) − e·n, n = N/K, by Runge-Kutta of order 4 with equal steps.
 *
 * @param rates  rates of the pot
 * @param untilH end of the curve [h], > 0
 * @param stepH  step [h], 0 < step ≤ 0.05
 * @returns share of a full pot at each step, the first being 0; a shape only, never a number of crabs
 * @throws {RangeError} a rate, end or step out of range
 * @source saturation and fading after Fishery Bulletin 117:211-219 (2019), escape after Fogarty & Addison 1997
 */
export function soakCurve(rates: SoakRates, untilH: number, stepH = longestStepH): SoakCurve {
  const { drawPerH, decayPerH, escapePerH } = rates
  if (!(
    drawPerH > 0 &&
    decayPerH >= 0 &&
    escapePerH >= 0 &&
    untilH > 0 &&
    stepH > 0 &&
    stepH <= longestStepH
  ))
    throw new RangeError(
      `soakCurve: rates ${drawPerH}, ${decayPerH}, ${escapePerH}, end ${untilH} h or step ${stepH} h out of range`,
    )
  const slope = (n: number, bait: number) => drawPerH * bait * Math.max(0, 1 - n) - escapePerH * n
  const steps = Math.ceil(untilH / stepH - 1e-9)
  const share = new Float64Array(steps + 1)
  const halfFade = Math.exp((-decayPerH * stepH) / 2)
  let n = 0
  let bait = 1
  for (let i = 1; i <= steps; i++) {
    const middle = bait * halfFade
    const end = middle * halfFade
    const k1 = slope(n, bait)
    const k2 = slope(n + (stepH / 2) * k1, middle)
    const k3 = slope(n + (stepH / 2) * k2, middle)
    const k4 = slope(n + stepH * k3, end)
    n += (stepH / 6) * (k1 + 2 * k2 + 2 * k3 + k4)
    bait = end
    share[i] = n
  }
  return { stepH, share }
}

/** Soaks that matter on a curve [h]; `fallsBelowH` is absent where the catch does not fall within the curve. */
export interface SoakMarks {
  readonly peakH: number
  /** First soak that reaches nine tenths of the best of the curve. */
  readonly nearlyBestH: number
  /** Soak after the peak at which the catch is back under nine tenths of its best. */
  readonly fallsBelowH?: number
}

const nearlyBest = 0.9

/**
 * Soak of the greatest catch on a curve and the soaks between which it is within a tenth of it.
 *
 * @param curve from `soakCurve`
 * @returns soaks [h]
 */
export function soakMarks(curve: SoakCurve): SoakMarks {
  let peak = 0
  curve.share.forEach((n, i) => {
    if (n > (curve.share[peak] ?? 0)) peak = i
  })
  const enough = nearlyBest * (curve.share[peak] ?? 0)
  const reached = curve.share.findIndex((n) => n >= enough)
  const fallen = curve.share.findIndex((n, i) => i > peak && n < enough)
  return {
    peakH: peak * curve.stepH,
    nearlyBestH: reached * curve.stepH,
    ...(fallen > 0 ? { fallsBelowH: fallen * curve.stepH } : {}),
  }
}
