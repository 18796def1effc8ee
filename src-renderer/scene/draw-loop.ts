/* Frames on demand: nothing is drawn unless something changed or moves. */

/** Called once a frame with the milliseconds since the last; returns whether it still moves. */
type Step = (deltaMs: number) => boolean

export interface DrawLoop {
  /** Asks for one frame. */
  invalidate(): void
  /** Moves something until its step says that it is done. */
  animate(step: Step): void
  /**
   * Something that drifts for as long as it is set, at a modest rate; undefined stops it. Where drawing turns out slow
   * it comes to rest, so that the machine stays free for the controls; set again a while later, it tries once more.
   */
  drift(step: ((deltaMs: number) => void) | undefined): void
  /** Stops all that moves, and draws no more until asked again. */
  halt(): void
}

const driftMs = 33
const longestStepMs = 60
/** A frame that comes this much after its time was slow to draw; so many in a row bring the drift to rest. */
const lateMs = 80
const lateFrames = 4
const restMs = 60_000

export function createDrawLoop(draw: () => void): DrawLoop {
  const steps = new Set<Step>()
  let drifting: ((deltaMs: number) => void) | undefined
  let frame = 0
  let timer = 0
  let last = 0
  let due = Infinity
  let late = 0
  let restedAt = -Infinity

  function tick(now: number) {
    frame = 0
    const delta = last === 0 ? 16 : Math.min(longestStepMs, now - last)
    last = now
    late = now > due + lateMs ? late + 1 : 0
    due = Infinity
    if (late >= lateFrames) {
      drifting = undefined
      restedAt = now
      late = 0
    }
    for (const step of steps) if (!step(delta)) steps.delete(step)
    drifting?.(delta)
    draw()
    if (steps.size > 0) invalidate()
    else if (drifting) goOn(now)
    else last = 0
  }

  function goOn(now: number) {
    due = now + driftMs
    clearTimeout(timer)
    timer = window.setTimeout(invalidate, driftMs)
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
      drifting = performance.now() - restedAt > restMs ? step : undefined
      if (drifting) invalidate()
      else clearTimeout(timer)
    },
    halt() {
      cancelAnimationFrame(frame)
      clearTimeout(timer)
      steps.clear()
      drifting = undefined
      frame = last = 0
      due = Infinity
    },
  }
}
