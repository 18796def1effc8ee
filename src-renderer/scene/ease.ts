import type { DrawLoop } from './draw-loop'

const smooth = (t: number) => t * t * (3 - 2 * t)

/** Runs `set` from 0 to 1 over a time, smoothly; at once when the time is nought. */
export function ease(loop: DrawLoop, durationMs: number, set: (share: number) => void): void {
  if (durationMs <= 0) {
    set(1)
    loop.invalidate()
    return
  }
  let elapsed = 0
  loop.animate((delta) => {
    elapsed += delta
    const t = Math.min(1, elapsed / durationMs)
    set(smooth(t))
    return t < 1
  })
}
