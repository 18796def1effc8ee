import { describe, expect, test } from 'vitest'
import type { CurrentConstants } from '@shared/schema/station'
import { bellinghamChannel } from '../../tests/fixtures/station-constants'
import { inOrder } from './retimed'
import { dayMs, minuteMs } from './signal'
import { streamEvents, streamSignal } from './stream'

const from = Date.UTC(2026, 5, 1)
const to = from + 10 * dayMs

const subordinate: CurrentConstants = {
  ...bellinghamChannel,
  offsets: {
    reference: 'noaa/PUG1741',
    slackBeforeFloodMinutes: 12,
    slackBeforeEbbMinutes: -8,
    floodMinutes: 25,
    ebbMinutes: 5,
    floodRatio: 0.6,
    ebbRatio: 1.3,
  },
}

describe('subordinate current station', () => {
  test('each phase comes at its own minutes and with its own ratio, strong daily inequality included', () => {
    const reference = streamEvents(streamSignal(bellinghamChannel, from, to), from, to)
    const here = streamEvents(streamSignal(subordinate, from, to), from - dayMs, to)
    const shift = { 'max-flood': 25, 'max-ebb': 5, flood: 12, ebb: -8 }
    // A weak run inside an ebb that never turns has no entry of its own in the tables.
    const main = reference.filter(
      ({ kind, mps }) => kind === 'slack' || kind === 'max-flood' || (kind === 'max-ebb' && mps < -1),
    )
    expect(main.length).toBeGreaterThan(30)
    for (const { kind, mps, next, timeMs } of main) {
      const minutes = kind === 'slack' ? shift[next ?? 'flood'] : kind === 'max-flood' ? 25 : 5
      const moved = timeMs + minutes * minuteMs
      const met = here.find((event) => event.kind === kind && Math.abs(event.timeMs - moved) < 2 * minuteMs)
      expect(met?.mps).toBeCloseTo(mps * (mps > 0 ? 0.6 : 1.3), 2)
      if (kind === 'slack') expect(met?.next).toBe(next)
    }
  })

  test('a half-tide shorter than its offsets gives way to its stronger neighbours', () => {
    const anchors = [
      { referenceMs: 0, hereMs: 0, weight: 2 },
      { referenceMs: 10, hereMs: 40, weight: 0 },
      { referenceMs: 20, hereMs: 15, weight: 0.1 },
      { referenceMs: 30, hereMs: 50, weight: 0 },
      { referenceMs: 60, hereMs: 60, weight: 3 },
    ]
    expect(inOrder(anchors).map(({ hereMs }) => hereMs)).toEqual([0, 15, 50, 60])
  })
})
