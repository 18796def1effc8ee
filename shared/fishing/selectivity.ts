const twoLn3 = 2 * Math.log(3)

/**
 * Share of crabs of one size that an opening keeps in, r(L) = 1/(1 + exp(−(2 ln 3/SR)(L − L50))).
 *
 * @param sizeMm size of the crab L [mm], measured as L50 is
 * @param l50Mm  size of which half are kept L50 [mm]
 * @param srMm   selection range L75 − L25 [mm], > 0
 * @returns share kept, 0-1; says nothing sure of one crab
 * @throws {RangeError} selection range not positive
 * @source logistic selection, the usual form of trap selectivity
 */
export function retention(sizeMm: number, l50Mm: number, srMm: number): number {
  if (!(srMm > 0)) throw new RangeError(`retention: selection range ${srMm} mm must be positive`)
  return 1 / (1 + Math.exp((-twoLn3 / srMm) * (sizeMm - l50Mm)))
}

/** Size of which a share p is kept: L50 + SR·ln(p/(1 − p))/(2 ln 3), 0 < p < 1. */
export function sizeRetained(share: number, l50Mm: number, srMm: number): number {
  return l50Mm + (srMm * Math.log(share / (1 - share))) / twoLn3
}

/**
 * Share kept where only some crabs try the opening, r' = 1 − C(1 − r).
 *
 * @param share   share kept of those that try it r, 0-1
 * @param contact share that try it C, 0-1
 * @returns share kept, 0-1
 * @source contact probability; 0.85-0.95 removed in mud crab trials, PLOS ONE 10.1371/journal.pone.0106414 and others
 */
export function retentionWithContact(share: number, contact: number): number {
  return 1 - contact * (1 - share)
}

/**
 * Shell length of which half are kept by a rectangular gap that a crab leaves sideways, H/(CD/CL).
 *
 * @param heightMm      height of the gap H [mm]
 * @param depthToLength depth over length of the shell
 * @returns shell length [mm]
 * @source geometry; Charybdis japonica 27 mm deep at 50 mm long (Yellow Sea vent study, abstract)
 */
export function gapLength50(heightMm: number, depthToLength: number): number {
  return heightMm / depthToLength
}

/**
 * Shell width of which half are kept by a round ring, D·clearance/(CL/CW).
 *
 * @param diameterMm    clear diameter D [mm]
 * @param clearance     share of the diameter that a shell as long as it can use
 * @param lengthToWidth length over width of the shell
 * @returns shell width [mm]
 * @source only the ratio is known: 2.11-2.16 for male blue crab, cull-ring study 2016 (abstract)
 */
export function ringWidth50(diameterMm: number, clearance: number, lengthToWidth: number): number {
  return (diameterMm * clearance) / lengthToWidth
}

/**
 * Shell width of which half of blue crabs are kept by square mesh in the sea, 11.66 + 2.362·bar.
 *
 * @param barMm bar of the mesh [mm], 30-50
 * @returns shell width [mm], give or take 12 mm
 * @throws {RangeError} bar outside the trials
 * @source line through five field values, Tarim Bilimleri Dergisi 21(2):256-261 (abstract)
 */
export function squareMeshWidth50(barMm: number): number {
  if (!(barMm >= 30 && barMm <= 50))
    throw new RangeError(`squareMeshWidth50: bar ${barMm} mm is outside 30-50 mm`)
  return 11.66 + 2.362 * barMm
}

/** Clear height of a gap for a legal crab of a depth [mm]: a little under it, so that it stays. */
export const gapHeightShare = 0.95
