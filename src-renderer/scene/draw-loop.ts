/* Frames on demand: nothing is drawn unless something changed or moves. */

/** Called once a frame with the milliseconds since the last; returns whether it still moves. */
type Step = (deltaMs: number) => boolean

export interface DrawLoop {
  /** Asks for one frame. */
  invalidate(): void
  /** Moves something until its step says that it is done. */
  animate(step: Step): void
  /** Something that drifts for as long as it is set, at a modest rate; undefined stops it. */
  drift(step: ((deltaMs: number) => void) | undefined): void
  dispose(): void
}

const driftMs = 33
const longestStepMs = 60

export function createDrawLoop(draw: () => void): DrawLoop {
  const steps = new Set<Step>()
  let drifting: ((deltaMs: number) => void) | undefined
  let frame = 0
  let timer = 0
  let last = 0
  let due = 0

  function tick(now: number) {
    frame = 0
    const delta = last === 0 ? 16 : Math.min(longestStepMs, now - last)
    last = now
    for (const step of steps) if (!step(delta)) steps.delete(step)
    drifting?.(delta)
    draw()
    if (steps.size > 0) invalidate()
    else if (drifting) rest(now)
    else last = 0
  }

  // A slow machine must stay free for the controls, so a late frame lengthens the rest before the next.
  function rest(now: number) {
    const late = due === 0 ? 0 : Math.max(0, now - due)
    const wait = Math.min(500, Math.max(driftMs, late * 3))
    due = now + wait + 17
    clearTimeout(timer)
    timer = window.setTimeout(invalidate, wait)
  }

  function invalidate() {
    if (frame === 0) frame = requestAnimationFrame(tick)
  }

  return {
    invalidate,
    animate(step) {
      steps.add(step)
      invalidate()
    },
    drift(step) {
      drifting = step
      if (step) invalidate()
      else clearTimeout(timer)
    },
    dispose() {
      cancelAnimationFrame(frame)
      clearTimeout(timer)
      steps.clear()
      drifting = undefined
    },
  }
}
