import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { Closing } from './closing'

describe('closing a window', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  const opened = () => {
    const ask = vi.fn()
    const close = vi.fn()
    const leaves = vi.fn<() => Promise<boolean>>()
    return { ask, close, leaves, closing: new Closing(ask, close, leaves, 4000) }
  }

  test('asks the page once, waits, and closes when it has saved', async () => {
    const { ask, close, closing } = opened()
    expect(closing.begin()).toBe(false)
    expect(closing.begin()).toBe(false)
    expect(ask).toHaveBeenCalledTimes(1)
    expect(close).not.toHaveBeenCalled()
    await closing.flushed(true)
    expect(close).toHaveBeenCalledTimes(1)
    expect(closing.begin()).toBe(true)
    vi.advanceTimersByTime(10_000)
    expect(close).toHaveBeenCalledTimes(1)
  })

  test('closes after a while even if the page never answers', () => {
    const { close, closing } = opened()
    closing.begin()
    vi.advanceTimersByTime(3999)
    expect(close).not.toHaveBeenCalled()
    vi.advanceTimersByTime(1)
    expect(close).toHaveBeenCalledTimes(1)
  })

  test('a page that saves unasked closes nothing', async () => {
    const { close, leaves, closing } = opened()
    await closing.flushed(true)
    await closing.flushed(false)
    expect(close).not.toHaveBeenCalled()
    expect(leaves).not.toHaveBeenCalled()
  })

  test.each([
    ['closes what could not save, once its reader agrees', true],
    ['stays open where its reader says so, and asks anew the next time', false],
  ])('%s', async (_, agrees) => {
    const { ask, close, leaves, closing } = opened()
    leaves.mockResolvedValue(agrees)
    closing.begin()
    await closing.flushed(false)
    vi.advanceTimersByTime(10_000)
    expect(close).toHaveBeenCalledTimes(agrees ? 1 : 0)
    expect(closing.begin()).toBe(agrees)
    expect(ask).toHaveBeenCalledTimes(agrees ? 1 : 2)
  })
})
