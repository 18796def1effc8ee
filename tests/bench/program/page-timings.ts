import type { Locator, Page } from 'playwright-core'

/** What one change of a slider cost [ms]. */
export interface Step {
  /** From the hand to the design: read, checked against the schema, put in the history. */
  readonly taken: number
  /** From the design to the page: all six verdicts, the view's geometry and every text that changed. */
  readonly recomputed: number
  /** Until the next frame was begun, drawing and all. */
  readonly frame: number
}

/** Drags a slider to and fro, one notch a frame, and times each notch from inside the page. */
export async function dragSlider(slider: Locator, steps: number): Promise<Step[]> {
  return slider.evaluate(async (element, count) => {
    const input = element as HTMLInputElement
    const [least, most, notch] = [Number(input.min), Number(input.max), Number(input.step)]
    const notches = Math.round((most - least) / notch)
    const frame = () => new Promise<number>((done) => requestAnimationFrame(done))
    const timed: Step[] = []
    let last = await frame()
    for (let i = 0; i < count; i++) {
      const at = i % (2 * notches)
      const value = least + notch * (at < notches ? at : 2 * notches - at)
      const start = performance.now()
      input.value = String(value)
      input.dispatchEvent(new Event('input', { bubbles: true }))
      const taken = performance.now() - start
      // The Bench settles in a callback of its own before the one asked for here, in the same frame.
      let begun = 0
      const settled = await new Promise<number>((done) => {
        const early = performance.now()
        requestAnimationFrame((now) => {
          begun = now
          done(performance.now() - Math.max(now, early))
        })
      })
      timed.push({ taken, recomputed: settled, frame: begun - last })
      last = begun
    }
    return timed
  }, steps)
}

/** Turns the view by the mouse for so many frames and gives the time from frame to frame [ms]. */
export async function orbit(page: Page, view: Locator, frames: number): Promise<number[]> {
  const box = await view.boundingBox()
  if (!box) throw new Error('the view is not on the screen')
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2]
  await page.mouse.move(x, y)
  await page.mouse.down()
  const times = page.evaluate(async (count) => {
    const seen: number[] = []
    for (let i = 0; i <= count; i++)
      seen.push(await new Promise<number>((done) => requestAnimationFrame(done)))
    return seen.slice(1).map((now, i) => now - (seen[i] ?? now))
  }, frames)
  let turning = true
  const hand = (async () => {
    for (let i = 0; turning; i++) await page.mouse.move(x + 120 * Math.sin(i / 12), y + 40 * Math.sin(i / 17))
  })()
  const measured = await times
  turning = false
  await hand
  await page.mouse.up()
  return measured
}

/** Memory that the page's script holds once what it no longer needs was cleared away [MB]. */
export async function heldMb(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page)
  await session.send('HeapProfiler.collectGarbage')
  const { usedSize } = await session.send('Runtime.getHeapUsage')
  await session.detach()
  return usedSize / 2 ** 20
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}
