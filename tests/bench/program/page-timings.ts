import type { Locator, Page } from 'playwright-core'

/** Drags a slider to and fro, one notch a frame, and gives the time from frame to frame [ms]. */
export async function dragSlider(slider: Locator, steps: number): Promise<number[]> {
  return slider.evaluate(async (element, count) => {
    const input = element as HTMLInputElement
    const [least, most, notch] = [Number(input.min), Number(input.max), Number(input.step)]
    const notches = Math.round((most - least) / notch)
    const frame = () => new Promise<number>((done) => requestAnimationFrame(done))
    const frames: number[] = []
    let last = await frame()
    for (let i = 0; i < count; i++) {
      const at = i % (2 * notches)
      input.value = String(least + notch * (at < notches ? at : 2 * notches - at))
      input.dispatchEvent(new Event('input', { bubbles: true }))
      const now = await frame()
      frames.push(now - last)
      last = now
    }
    return frames
  }, steps)
}

/**
 * Processor time of the page's script for one change of a slider [ms]. Unlike the clock, it leaves out what the
 * machine does besides, such as drawing in software.
 */
export async function scriptPerChange(page: Page, slider: Locator, steps: number): Promise<number> {
  const session = await page.context().newCDPSession(page)
  await session.send('Performance.enable', { timeDomain: 'threadTicks' })
  const script = async () => {
    const { metrics } = await session.send('Performance.getMetrics')
    return metrics.find(({ name }) => name === 'ScriptDuration')?.value ?? Number.NaN
  }
  const before = await script()
  await dragSlider(slider, steps)
  const after = await script()
  await session.detach()
  return ((after - before) * 1000) / steps
}

/** Changes the design so many times, as fast as the page lets go of each change. */
export async function changeOften(slider: Locator, times: number): Promise<void> {
  await slider.evaluate(async (element, count) => {
    const input = element as HTMLInputElement
    for (let i = 0; i < count; i++) {
      input.value = String(6 + (i % 24) / 2)
      input.dispatchEvent(new Event('input', { bubbles: true }))
      await new Promise((done) => setTimeout(done, 5))
    }
  }, times)
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

/** What the page holds once what it no longer needs was cleared away. */
export async function heldBy(page: Page): Promise<{ mb: number; nodes: number; listeners: number }> {
  const session = await page.context().newCDPSession(page)
  await session.send('HeapProfiler.collectGarbage')
  const { usedSize } = await session.send('Runtime.getHeapUsage')
  const { nodes, jsEventListeners } = await session.send('Memory.getDOMCounters')
  await session.detach()
  return { mb: usedSize / 2 ** 20, nodes, listeners: jsEventListeners }
}

/** How much of what the page holds is code that the browser compiled [MB]: it goes on compiling what is used often. */
export async function compiledCode(page: Page): Promise<number> {
  const session = await page.context().newCDPSession(page)
  const chunks: string[] = []
  session.on('HeapProfiler.addHeapSnapshotChunk', ({ chunk }) => chunks.push(chunk))
  await session.send('HeapProfiler.takeHeapSnapshot')
  await session.detach()
  const { snapshot, nodes } = JSON.parse(chunks.join('')) as HeapSnapshot
  const { node_fields: fields, node_types: types } = snapshot.meta
  const code = types[0].indexOf('code')
  let bytes = 0
  for (let node = 0; node < nodes.length; node += fields.length)
    if (nodes[node + fields.indexOf('type')] === code) bytes += nodes[node + fields.indexOf('self_size')] ?? 0
  return bytes / 2 ** 20
}

interface HeapSnapshot {
  readonly snapshot: { readonly meta: { readonly node_fields: string[]; readonly node_types: [string[]] } }
  readonly nodes: number[]
}

export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN
}
