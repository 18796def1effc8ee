/** Factors are not told apart beyond this: the pot is hardly pushed at all. */
export const largestFactor = 1000

/** What pushes and what holds a pot on the bed. */
export interface Hold {
  /** Submerged weight of pot, ballast and bait [N]; live catch is near-neutral and not counted. */
  readonly wetWeightN: number
  readonly dragN: number
  /** Overturning moment of the drag about the bed [N·m]. */
  readonly dragMomentNm: number
  /** Lift of the water on the pot [N]; a downward push counts as none. */
  readonly liftN: number
  readonly ropeHorizontalN: number
  readonly ropeUpliftN: number
  readonly friction: number
  /** Arm from the centre of gravity to the down-current ground edge [m]. */
  readonly edgeArmM: number
  /** Arm of the lift and of the rope's uplift about that edge [m]; the edge arm for a central bridle. */
  readonly upliftArmM: number
  readonly bridleHeightM: number
  /** Slope of the bed, down along the current [rad]. */
  readonly slopeRad?: number
}

/** How far a pot is from moving: above 1 it stays. */
export interface HoldFactors {
  readonly slideFactor: number
  readonly tipFactor: number
}

/**
 * Sliding and tipping factors of a pot with its rope pulling on it.
 *
 * SF_slide = μ (W cos β - L - V)/(F + H + W sin β), SF_tip = W b cos β/(F z_c + (L + V) x + H z_t); on a level
 * bed β = 0 (the small moment of the weight's own down-slope part is left out). Below 1 it moves; 1.5 leaves 22 % in the current. Rope pulling down (V < 0) counts as none.
 *
 * @param hold forces [N], arms [m] and grip
 * @returns factors, from 0 (no weight left on the bed) to 1000
 * @source statics of a rigid body; 1.5 is the usual factor for deadweight anchors
 */
export function holdFactors(hold: Hold): HoldFactors {
  const slope = hold.slopeRad ?? 0
  const lift = Math.max(0, hold.liftN)
  const uplift = Math.max(0, hold.ropeUpliftN)
  const downhill = hold.wetWeightN * Math.sin(slope)
  const grip = hold.friction * (hold.wetWeightN * Math.cos(slope) - lift - uplift)
  const push = hold.dragN + hold.ropeHorizontalN + downhill
  const righting = hold.wetWeightN * hold.edgeArmM * Math.cos(slope)
  const overturning =
    hold.dragMomentNm + (lift + uplift) * hold.upliftArmM + hold.ropeHorizontalN * hold.bridleHeightM
  return { slideFactor: factor(grip, push), tipFactor: factor(righting, overturning) }
}

function factor(holds: number, moves: number): number {
  if (holds <= 0) return 0
  return moves * largestFactor <= holds ? largestFactor : holds / moves
}
