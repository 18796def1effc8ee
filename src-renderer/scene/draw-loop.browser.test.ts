import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { createDrawLoop } from './draw-loop'

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['requestAnimationFrame', 'cancelAnimationFrame', 'setTimeout', 'performance'] })
})
afterEach(() => {
  vi.restoreAllMocks()
  vi.useRealTimers()
})

/** A loop on a machine that takes so long over a frame, by its number: the next one comes only when the last is done. */
function loopOn(drawMs: (frame: number) => number) {
  const frames: number[] = []
  let busyUntil = 0
  const ask = window.requestAnimationFrame.bind(window)
  vi.spyOn(window, 'requestAnimationFrame').mockImplementation((tick) => {
    const wait = () => ask((now) => void (now < busyUntil ? wait() : tick(now)))
    return wait()
  })
  const loop = createDrawLoop(() => {
    frames.push(performance.now())
    busyUntil = performance.now() + drawMs(frames.length)
  })
  return { loop, frames }
}

test('the drift goes on for as long as frames are quick', () => {
  const { loop, frames } = loopOn(() => 10)
  const step = vi.fn()
  loop.drift(step)
  vi.advanceTimersByTime(10_000)
  expect(frames.length).toBeGreaterThan(190)
  expect(step).toHaveBeenCalledTimes(frames.length)
  loop.drift(undefined)
  vi.advanceTimersByTime(1000)
  const stopped = frames.length
  vi.advanceTimersByTime(1000)
  expect(frames.length).toBe(stopped)
})

test('where frames are slow the drift comes to rest, changes are drawn all the same, and later it tries again', () => {
  const { loop, frames } = loopOn(() => 300)
  const step = vi.fn()
  loop.drift(step)
  vi.advanceTimersByTime(10_000)
  const rested = frames.length
  expect(rested).toBeLessThan(10)
  vi.advanceTimersByTime(10_000)
  expect(frames.length).toBe(rested)

  step.mockClear()
  loop.drift(step)
  loop.invalidate()
  vi.advanceTimersByTime(1000)
  expect(frames.length).toBe(rested + 1)
  expect(step).not.toHaveBeenCalled()

  vi.advanceTimersByTime(60_000)
  loop.drift(step)
  vi.advanceTimersByTime(1000)
  expect(step).toHaveBeenCalled()
})

test('a slow frame now and then stops nothing', () => {
  const { loop, frames } = loopOn((frame) => (frame % 4 === 0 ? 10 : 200))
  const step = vi.fn()
  loop.drift(step)
  vi.advanceTimersByTime(20_000)
  expect(step).toHaveBeenCalledTimes(frames.length)
  expect(frames.length).toBeGreaterThan(100)
})
