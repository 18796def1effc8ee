import { describe, expect, test } from 'vitest'
import { bellinghamChannel, fridayHarbor } from '../../tests/fixtures/station-constants'
import { harmonicSum } from './harmonic-sum'
import { dayMs, signalOf } from './signal'
import { streamEvents } from './stream'
import { turningPoints, zeroCrossings } from './turning-points'

const from = Date.UTC(2026, 0, 10)
const to = from + 30 * dayMs
const tide = harmonicSum(fridayHarbor.constituents, fridayHarbor.meanLevelM)
const stream = harmonicSum(bellinghamChannel.constituents, bellinghamChannel.meanFlowMps)

/** Extremes and crossings by brute force: every 20 seconds, nothing refined. */
function dense(signal: typeof tide) {
  const step = 20_000
  const values = signal.sample(from - step, step, (to - from) / step + 2)
  const turns: { timeMs: number; value: number }[] = []
  const slacks: number[] = []
  for (let i = 1; i < values.length - 1; i++) {
    const [a, b, c] = [values[i - 1] ?? 0, values[i] ?? 0, values[i + 1] ?? 0]
    const timeMs = from + (i - 1) * step
    if ((b > a && b >= c) || (b < a && b <= c)) turns.push({ timeMs, value: b })
    if (b < 0 !== c < 0) slacks.push(timeMs + (step * b) / (b - c))
  }
  return { turns, slacks }
}

describe('turning points and slacks', () => {
  test('high and low waters are those of a dense sweep, to the second', () => {
    const found = turningPoints(tide, from, to, 0)
    const { turns } = dense(tide)
    expect(found.length).toBe(turns.length)
    found.forEach(({ timeMs, value }, i) => {
      expect(Math.abs(timeMs - (turns[i]?.timeMs ?? 0))).toBeLessThan(21_000)
      expect(value).toBeCloseTo(turns[i]?.value ?? 0, 4)
    })
  })

  test('slacks are those of a dense sweep within a second', () => {
    const found = zeroCrossings(stream, from, to)
    const { slacks } = dense(stream)
    expect(found.length).toBe(slacks.length)
    found.forEach(({ timeMs }, i) => {
      expect(Math.abs(timeMs - (slacks[i] ?? 0))).toBeLessThan(1000)
    })
  })

  test('an extreme of a pure sine is placed within a second', () => {
    const period = 12.42 * 3_600_000
    const sine = signalOf((t) => Math.cos((2 * Math.PI * (t - from)) / period))
    const [low] = turningPoints(sine, from + 1000, to, 0)
    expect(low?.high).toBe(false)
    expect(Math.abs((low?.timeMs ?? 0) - from - period / 2)).toBeLessThan(1000)
  })

  test('highs and lows alternate, whatever ripple is left out', () => {
    for (const least of [0, 0.01, 0.2, 0.5]) {
      const found = turningPoints(tide, from, to, least)
      found.slice(1).forEach(({ high, value }, i) => {
        expect(high).toBe(!found[i]?.high)
        expect(Math.abs(value - (found[i]?.value ?? 0))).toBeGreaterThanOrEqual(least)
      })
    }
  })

  test('an ebb that weakens without turning has a least ebb and no slack', () => {
    const events = streamEvents(stream, Date.UTC(2026, 5, 1, 4), Date.UTC(2026, 5, 1, 18))
    expect(events.map(({ kind }) => kind)).toEqual(['max-ebb', 'least-ebb', 'max-ebb'])
  })
})
