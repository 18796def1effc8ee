/**
 * Least tipping arm of a round frame on feet, in the worst direction.
 *
 * b = R cos(π/n); a full ring (no feet) has the whole radius.
 *
 * @param radiusM radius of the ring R [m]
 * @param feet    number of feet n, evenly spaced; 0 for a ring that stands all round
 * @returns arm [m]; 0 for one or two feet, on which nothing stands
 * @source regular polygon: the distance from the centre to a side
 */
export function ringEdgeArm(radiusM: number, feet: number): number {
  if (feet === 0) return radiusM
  return feet < 3 ? 0 : radiusM * Math.cos(Math.PI / feet)
}
