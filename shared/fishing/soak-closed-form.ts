/*
 * Catch against soak where it can be written down: relative numbers only. N crabs held; a first entry rate
 * [crabs/h]; K number at which entry stops; e escape rate [per crab per h]; k decay of the bait [1/h].
 */

export interface SteadyEntry {
  /** First entry rate a [crabs/h], > 0. */
  readonly entryPerH: number
  /** Number at which entry stops K [crabs], > 0. */
  readonly saturation: number
  /** Escape rate e [1/h], ≥ 0. */
  readonly escapePerH: number
}

function settlingRate({ entryPerH, saturation, escapePerH }: SteadyEntry): number {
  if (!(entryPerH > 0 && saturation > 0 && escapePerH >= 0))
    throw new RangeError(
      `soak: entry ${entryPerH} and saturation ${saturation} must be positive, escape ${escapePerH} not negative`,
    )
  return entryPerH / saturation + escapePerH
}

/**
 * Relative catch with bait that does not fade, entry that slows as the pot fills, and escape.
 *
 * N(t) = (a/r)(1 − exp(−r·t)), r = a/K + e
 *
 * @param entry rates
 * @param soakH soak [h], ≥ 0
 * @returns relative catch, in the unit of K
 * @throws {RangeError} a rate out of range
 * @source form after Fogarty & Addison 1997, ICES J. Mar. Sci. 54:193-205 (recalled)
 */
export function steadyCatch(entry: SteadyEntry, soakH: number): number {
  return steadyPlateau(entry) * -Math.expm1(-settlingRate(entry) * soakH)
}

/**
 * Relative catch that a long soak settles at, N∞ = a/(a/K + e).
 *
 * @returns relative catch, in the unit of K
 * @throws {RangeError} a rate out of range
 * @source as `steadyCatch`
 */
export function steadyPlateau(entry: SteadyEntry): number {
  return entry.entryPerH / settlingRate(entry)
}

/**
 * Soak that reaches a share of the plateau, t = −ln(1 − p)/(a/K + e).
 *
 * @param share share p of the plateau, 0 ≤ p < 1
 * @returns soak [h]
 * @throws {RangeError} a rate or the share out of range
 * @source as `steadyCatch`
 */
export function soakToShare(entry: SteadyEntry, share: number): number {
  if (!(share >= 0 && share < 1))
    throw new RangeError(`soakToShare: share ${share} must be from 0 to below 1`)
  return -Math.log1p(-share) / settlingRate(entry)
}

/**
 * Relative catch with fading bait and escape, never full.
 *
 * N(t) = a(exp(−e·t) − exp(−k·t))/(k − e); at k = e it is a·t·exp(−k·t)
 *
 * @param entryPerH  first entry rate a [crabs/h]
 * @param decayPerH  decay of the bait k [1/h], > 0
 * @param escapePerH escape rate e [1/h], ≥ 0
 * @param soakH      soak [h], ≥ 0
 * @returns relative catch
 * @source solution of dN/dt = a·exp(−k·t) − e·N
 */
export function fadingCatch(entryPerH: number, decayPerH: number, escapePerH: number, soakH: number): number {
  const gap = decayPerH - escapePerH
  if (Math.abs(gap) < 1e-9) return entryPerH * soakH * Math.exp(-decayPerH * soakH)
  return (entryPerH * (Math.exp(-escapePerH * soakH) - Math.exp(-decayPerH * soakH))) / gap
}

/**
 * Soak of the greatest catch with fading bait and escape, never full: t* = ln(k/e)/(k − e).
 *
 * @param decayPerH  decay of the bait k [1/h], > 0
 * @param escapePerH escape rate e [1/h], > 0
 * @returns soak [h]
 * @throws {RangeError} a rate that is not positive: without escape the catch never falls
 * @source maximum of `fadingCatch`
 */
export function fadingPeakSoak(decayPerH: number, escapePerH: number): number {
  if (!(decayPerH > 0 && escapePerH > 0))
    throw new RangeError(`fadingPeakSoak: decay ${decayPerH} and escape ${escapePerH} must be positive`)
  const gap = decayPerH - escapePerH
  return Math.abs(gap) < 1e-9 ? 1 / decayPerH : Math.log(decayPerH / escapePerH) / gap
}

/**
 * Relative catch with fading bait and a pot that fills, no escape.
 *
 * N(t) = K(1 − exp(−(a/(K·k))(1 − exp(−k·t))))
 *
 * @param entryPerH  first entry rate a [crabs/h]
 * @param saturation number at which entry stops K
 * @param decayPerH  decay of the bait k [1/h], > 0
 * @param soakH      soak [h], ≥ 0
 * @returns relative catch, in the unit of K
 * @source solution of dN/dt = a·exp(−k·t)(1 − N/K)
 */
export function fillingCatch(
  entryPerH: number,
  saturation: number,
  decayPerH: number,
  soakH: number,
): number {
  const drawn = (entryPerH / saturation / decayPerH) * -Math.expm1(-decayPerH * soakH)
  return saturation * -Math.expm1(-drawn)
}
