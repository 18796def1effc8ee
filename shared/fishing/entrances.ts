/**
 * Share of arriving crabs that meet an entrance, P = min(1, n(A + w)). Only compares layouts of one pot.
 *
 * @param count         equal entrances n, ≥ 0
 * @param widthFraction width of one as a share of the pot's girth w, 0-1
 * @param searchArc     share of the girth that a crab searches A, 0-1
 * @returns share, 0-1
 * @source geometry; two thirds of blue swimmer crabs searched under a quarter of the girth, Asian Fish. Sci. 3 (abstract)
 */
export function meetsEntrance(count: number, widthFraction: number, searchArc = 0.25): number {
  return Math.min(1, count * (searchArc + widthFraction))
}

/**
 * Mean entry rate behind a share that entered in a trial, −ln(1 − f)/t.
 *
 * @param share     share of the crabs that entered f, 0 ≤ f < 1
 * @param durationH length of the trial [h], > 0
 * @returns rate [1/h]
 */
export function impliedEntryRate(share: number, durationH: number): number {
  return -Math.log1p(-share) / durationH
}

export type EntranceFit = 'blocked' | 'tight' | 'ok'

/** An entrance is roomy from this many times the crab's depth; 2.1 worked in S. serrata trials. An assumption. */
const roomyHeight = 1.5

/**
 * Whether a crab that walks in sideways with folded legs fits an entrance.
 *
 * blocked: height < depth or width < length of the shell; tight: height < 1.5 depths; else ok.
 *
 * @param opening clear height and width [mm]
 * @param crab    depth and length of the shell [mm]
 * @returns the fit
 * @source geometry; 70 mm slits served crabs 33 mm deep, Puspito 2013 AACL Bioflux 407-414; 1.5 is an assumption
 */
export function entranceFit(
  opening: { readonly heightMm: number; readonly widthMm: number },
  crab: { readonly depthMm: number; readonly lengthMm: number },
): EntranceFit {
  if (opening.heightMm < crab.depthMm || opening.widthMm < crab.lengthMm) return 'blocked'
  return opening.heightMm < roomyHeight * crab.depthMm ? 'tight' : 'ok'
}
