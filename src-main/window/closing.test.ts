import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest'
import { Closing } from './closing'

describe('closing a window', () => {
  beforeEach(() => void vi.useFakeTimers())
  afterEach(() => void vi.useRealTimers())

  const opened = () => {
    const ask = vi.fn()
    const close = vi.fn()
    return { ask, close, closing: new Closing(ask, close, 4000) }
  }

  test('asks the page once, waits, and closes when it has saved', () => {
    const { ask, close, closing } = opened()
    expect(closing.begin()).toBe(false)
    expect(closing.begin()).toBe(false)
    expect(ask).toHaveBeenCalledTimes(1)
    expect(close).not.toHaveBeenCalled()
    closing.flushed()
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

  test('a page that saves unasked closes nothing', () => {
    const { close, closing } = opened()
    closing.flushed()
    expect(close).not.toHaveBeenCalled()
  })
})
