/*
 * Holes in netting, on the flat: a rectangle or an ellipse about a centre. Coordinates are metres on the panel.
 */

export interface Hole {
  readonly shape: 'rectangle' | 'ellipse'
  readonly u: number
  readonly v: number
  readonly halfWidth: number
  readonly halfHeight: number
}

/** The share of a segment that lies inside the hole, as [enter, leave] of 0-1; undefined when it misses. */
export function insideHole(
  hole: Hole,
  u0: number,
  v0: number,
  u1: number,
  v1: number,
): readonly [number, number] | undefined {
  const x0 = (u0 - hole.u) / hole.halfWidth
  const y0 = (v0 - hole.v) / hole.halfHeight
  const dx = (u1 - u0) / hole.halfWidth
  const dy = (v1 - v0) / hole.halfHeight
  return hole.shape === 'rectangle' ? insideSquare(x0, y0, dx, dy) : insideCircle(x0, y0, dx, dy)
}

/** Clips against |x| < 1, |y| < 1 (slab method). */
function insideSquare(x0: number, y0: number, dx: number, dy: number): [number, number] | undefined {
  let enter = 0
  let leave = 1
  for (const [from, step] of [
    [x0, dx],
    [y0, dy],
  ] as const) {
    if (Math.abs(step) < 1e-12) {
      if (Math.abs(from) >= 1) return undefined
      continue
    }
    const a = (-1 - from) / step
    const b = (1 - from) / step
    enter = Math.max(enter, Math.min(a, b))
    leave = Math.min(leave, Math.max(a, b))
  }
  return leave > enter ? [enter, leave] : undefined
}

/** Clips against x² + y² < 1. */
function insideCircle(x0: number, y0: number, dx: number, dy: number): [number, number] | undefined {
  const a = dx * dx + dy * dy
  if (a < 1e-18) return undefined
  const half = x0 * dx + y0 * dy
  const rest = half * half - a * (x0 * x0 + y0 * y0 - 1)
  if (rest <= 0) return undefined
  const root = Math.sqrt(rest)
  const enter = Math.max(0, (-half - root) / a)
  const leave = Math.min(1, (-half + root) / a)
  return leave > enter ? [enter, leave] : undefined
}

/**
 * The pieces of a segment that no hole takes away.
 *
 * @param misses gives a segment's inside share for one hole
 * @returns pieces as [from, to] of 0-1, in order; one whole piece when nothing is cut
 */
export function piecesOutside<H extends Hole>(
  holes: readonly H[],
  misses: (hole: H) => readonly [number, number] | undefined,
): readonly (readonly [number, number])[] {
  let pieces: readonly (readonly [number, number])[] = [whole]
  for (const hole of holes) {
    const cut = misses(hole)
    if (!cut) continue
    pieces = pieces.flatMap(([from, to]) => {
      const left: [number, number][] = []
      if (cut[0] > from) left.push([from, Math.min(to, cut[0])])
      if (cut[1] < to) left.push([Math.max(from, cut[1]), to])
      return left
    })
  }
  return pieces
}

const whole: readonly [number, number] = [0, 1]
