import { signalOf, type Signal } from './signal'

/** A moment at the reference station and the moment that answers to it here. */
export interface Anchor {
  readonly referenceMs: number
  readonly hereMs: number
  /** How much the moment matters; where two anchors contradict each other, the weaker is left out. */
  readonly weight: number
}

/**
 * A signal that follows a reference signal through shifted moments: between two anchors time is stretched
 * evenly, so that each anchor of the reference falls on its own moment here.
 *
 * @param reference signal at the reference station
 * @param anchors   in order of time at the reference, at least two
 * @param reshape   turns the reference's value into the one here; is given the segment's number
 * @throws {RangeError} fewer than two anchors
 */
export function retimed(
  reference: Signal,
  anchors: readonly Anchor[],
  reshape: (value: number, segment: number, share: number) => number,
): Signal {
  if (anchors.length < 2) throw new RangeError('retimed: at least two anchors are needed')
  let last = 0
  return signalOf((timeMs) => {
    last = segmentAt(anchors, timeMs, last)
    const from = anchors[last]
    const to = anchors[last + 1]
    if (!from || !to) throw new RangeError('retimed: no segment')
    const share = (timeMs - from.hereMs) / (to.hereMs - from.hereMs)
    const referenceMs = from.referenceMs + share * (to.referenceMs - from.referenceMs)
    return reshape(reference.at(referenceMs), last, share)
  })
}

/** Number of the segment that holds a moment; asked in order of time, it hardly has to look. */
function segmentAt(anchors: readonly Anchor[], timeMs: number, hint: number): number {
  let i = hint
  while (i > 0 && timeMs < (anchors[i]?.hereMs ?? 0)) i--
  while (i < anchors.length - 2 && timeMs >= (anchors[i + 1]?.hereMs ?? 0)) i++
  return i
}

/**
 * Anchors whose moments here come in order. Offsets can be larger than a weak half-tide lasts; then that
 * half-tide has no place here, and the weaker of the two anchors in conflict goes.
 */
export function inOrder(anchors: readonly Anchor[]): Anchor[] {
  const kept: Anchor[] = []
  for (const anchor of anchors) {
    let beaten = false
    while (!beaten) {
      const last = kept.at(-1)
      if (!last || last.hereMs < anchor.hereMs) break
      if (last.weight < anchor.weight) kept.pop()
      else beaten = true
    }
    if (!beaten) kept.push(anchor)
  }
  return kept
}
