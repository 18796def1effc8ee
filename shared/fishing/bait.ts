/**
 * Decay rate of anything that halves in a given time, k = ln 2/half-life.
 *
 * @param halfLife half-life, > 0, in any unit of time
 * @returns rate, in the inverse of that unit
 * @throws {RangeError} half-life not positive
 */
export function decayRate(halfLife: number): number {
  if (!(halfLife > 0)) throw new RangeError(`decayRate: half-life ${halfLife} must be positive`)
  return Math.LN2 / halfLife
}

/**
 * Strength of the scent as a share of its start, I(t)/I0 = exp(−k·t).
 *
 * @param decayPerH decay rate k [1/h], ≥ 0
 * @param soakH     soak [h], ≥ 0
 * @returns share of the first strength, 0-1
 * @source exponential form; bait attractants fall within 6-24 h, Fishery Bulletin 117:211-219 (2019)
 */
export function baitStrength(decayPerH: number, soakH: number): number {
  return Math.exp(-decayPerH * soakH)
}

/** Share of all the attractant that has left the bait by the end of the soak: 1 − exp(−k·t). */
export function baitReleased(decayPerH: number, soakH: number): number {
  return -Math.expm1(-decayPerH * soakH)
}

/**
 * Half-life of bait behind a shield that lets out a share f of the first strength: half-life/f. The total that
 * leaves stays the same.
 *
 * @param exposedHalfLifeH half-life in the open [h], > 0
 * @param shieldFactor     share f of the open strength, 0 < f ≤ 1
 * @returns half-life behind the shield [h]
 * @throws {RangeError} factor out of range
 * @source mass balance; the factor itself is an assumption
 */
export function shieldedHalfLife(exposedHalfLifeH: number, shieldFactor: number): number {
  if (!(shieldFactor > 0 && shieldFactor <= 1))
    throw new RangeError(`shieldedHalfLife: factor ${shieldFactor} must be above 0 and at most 1`)
  return exposedHalfLifeH / shieldFactor
}

/**
 * Relative catch against the amount of bait, W/(W + W50).
 *
 * @param baitKg     bait W [kg], ≥ 0
 * @param halfwayKg  bait of half the greatest catch W50 [kg], > 0
 * @returns share of the most that bait can do, 0-1
 * @source shape (falling gain) after Cyr & Sainte-Marie 1995, Fish. Res. 24; W50 is an assumption
 */
export function baitMassIndex(baitKg: number, halfwayKg: number): number {
  return baitKg / (baitKg + halfwayKg)
}

/** Strength at which bait has done its work: an eighth, which an 8 h half-life reaches at the usual 24 h. */
const spentShare = 1 / 8

/** What a holder does to bait: how much scent it lets out, and how long crabs need to strip it. */
export interface BaitHolding {
  readonly halfLifeH: number
  readonly shieldFactor: number
  /** Time in which crabs and small fish strip the holder [h]; Infinity where they cannot reach it. */
  readonly strippedH: number
}

/**
 * Decay rate of bait in a holder, washing out and being eaten at once: k = f·ln 2/h + ln 8/T.
 *
 * @param holding half-life h in the open [h], shield factor f, stripping time T [h]
 * @returns rate [1/h]
 * @source wash-out by mass balance; stripping is an assumption from common practice
 */
export function holderDecayRate({ halfLifeH, shieldFactor, strippedH }: BaitHolding): number {
  return decayRate(shieldedHalfLife(halfLifeH, shieldFactor)) + Math.log(1 / spentShare) / strippedH
}

/** Hours until bait that fades at a rate [1/h] is spent. */
export function baitLifeH(decayPerH: number): number {
  return Math.log(1 / spentShare) / decayPerH
}
