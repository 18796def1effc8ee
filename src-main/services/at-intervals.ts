const everyMs = 200

/** Tells how far something is a few times a second at most, and not of what is over sooner. */
export function atIntervals(tell: (done: number, of: number) => void): (done: number, of: number) => void {
  let toldAt = 0
  return (done, of) => {
    const at = performance.now()
    if (done === 0) toldAt = at
    if (at - toldAt < everyMs) return
    toldAt = at
    tell(done, of)
  }
}
