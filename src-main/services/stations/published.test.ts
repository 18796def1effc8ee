import { describe, expect, test } from 'vitest'
import { heightSignal, leastTideM } from '@shared/tides/height'
import { hourMs, minuteMs } from '@shared/tides/signal'
import { streamEvents, streamSignal } from '@shared/tides/stream'
import { turningPoints } from '@shared/tides/turning-points'
import { MPS_PER_KNOT } from '@shared/units/display'
import published from '../../../tests/fixtures/noaa-tides-2026.json'
import { StationLibrary } from './library'
import { packStations } from './pack'

/*
 * The whole way from the shipped constants to a printed table, against the tables that NOAA itself publishes. The
 * two differ a little because NOAA holds node factors for a calendar year by Schureman's formulas and publishes
 * constants rounded; the limits here are the largest differences seen, rounded up, so that any slip shows.
 */
const packed = packStations('test')
const library = new StationLibrary(packed.index, packed.constants)

const timeOf = (text: string | number | undefined) => Date.parse(`${text}:00Z`)
const nearest = <T extends { timeMs: number }>(events: readonly T[], timeMs: number) =>
  events.reduce<T | undefined>(
    (best, event) =>
      best && Math.abs(best.timeMs - timeMs) <= Math.abs(event.timeMs - timeMs) ? best : event,
    undefined,
  )

function spanOf(events: (string | number)[][]): [number, number] {
  return [timeOf(events[0]?.[0]) - 3 * hourMs, timeOf(events.at(-1)?.[0]) + 3 * hourMs]
}

describe('high and low waters published by NOAA', () => {
  test.each(Object.entries(published.tides))('%s', (id, { events }) => {
    const tide = library.tideConstants(id)
    if (!tide) throw new Error(`no station ${id}`)
    const [from, to] = spanOf(events)
    const ours = turningPoints(heightSignal(tide, from, to), from, to, leastTideM)
    for (const [at, height] of events) {
      const met = nearest(ours, timeOf(at))
      expect(Math.abs((met?.timeMs ?? 0) - timeOf(at)) / minuteMs, `time of ${at}`).toBeLessThan(8)
      expect(Math.abs((met?.value ?? NaN) - Number(height)), `height of ${at}`).toBeLessThan(0.04)
    }
  })
})

describe('slacks and strongest streams published by NOAA', () => {
  // Largest difference of a slack [min], of a maximum [min] and of its speed [kn]; a turn below 0.75 kn is too flat
  // to be timed, in NOAA's table as in ours.
  const limits: Record<string, [slack: number, maximum: number, knots: number]> = {
    'noaa/PUG1741': [3, 7, 0.06],
    'noaa/PUG1701': [7, 15, 0.3],
    'noaa/PUG1702': [13, 3, 0.1],
    'noaa/PCT0236': [7, 7, 0.06],
    'noaa/ACT0101': [2, 2, 0.03],
    'noaa/ACT0116': [5, 3, 0.03],
  }
  test.each(Object.entries(published.currents))('%s', (id, { events }) => {
    const current = library.currentConstants(id)
    const [slackMin, maximumMin, knots] = limits[id] ?? [0, 0, 0]
    if (!current) throw new Error(`no station ${id}`)
    const [from, to] = spanOf(events)
    const ours = streamEvents(streamSignal(current, from, to), from, to)
    for (const [at, speed] of events) {
      const slack = speed === 0
      const met = nearest(
        ours.filter(({ kind }) => (kind === 'slack') === slack),
        timeOf(at),
      )
      const minutes = Math.abs((met?.timeMs ?? 0) - timeOf(at)) / minuteMs
      if (slack) expect(minutes, `slack at ${at}`).toBeLessThan(slackMin)
      else if (Math.abs(Number(speed)) >= 0.75) expect(minutes, `maximum at ${at}`).toBeLessThan(maximumMin)
      if (!slack)
        expect(Math.abs((met?.mps ?? NaN) / MPS_PER_KNOT - Number(speed)), `speed at ${at}`).toBeLessThan(
          knots,
        )
    }
  })
})
