import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { rateOfTheDay } from '@shared/physics/tide/rate-of-the-day'
import { fiftyNinetyRate, twelfthsHeight } from '@shared/physics/tide/rules-of-thumb'
import { harmonicSum } from './harmonic-sum'
import { meanRanges, stationRanges } from './mean-ranges'
import { modelTide } from './model-tide'
import { dayMs, hourMs, minuteMs } from './signal'
import { sineStream } from './sine-stream'
import { streamEvents } from './stream'
import { turningPoints } from './turning-points'
import { fridayHarbor } from '../../tests/fixtures/station-constants'

const start = Date.UTC(2026, 3, 1)

describe('rate of the day', () => {
  // tidalstreams.net/Interpolation.htm reads 1.6 kn off its diagram for neap 1.0 kn, spring 2.1 kn and a range of
  // 4.8 m, without stating the two mean ranges: any pair that gives 1.6 must lie on the same straight line.
  test('is the published reading wherever 4.8 m lies six elevenths of the way from neaps to springs', () => {
    const neapM = 3
    const springM = neapM + (4.8 - neapM) / ((1.6 - 1) / (2.1 - 1))
    const spring = { rangeM: springM, rate: 2.1 }
    const neap = { rangeM: neapM, rate: 1 }
    expect(rateOfTheDay(4.8, spring, neap)).toBeCloseTo(1.6, 9)
    expect(rateOfTheDay(springM, spring, neap)).toBeCloseTo(2.1, 9)
    expect(rateOfTheDay(neapM, spring, neap)).toBeCloseTo(1, 9)
  })
})

describe('common practice, no published origin', () => {
  test('the plain tide is a twelfths tide within 2 % of its range', () => {
    const tide = harmonicSum([['M2', 1, 0]], 1)
    const turns = turningPoints(tide, start, start + dayMs, 0.01)
    const first = turns.findIndex(({ high }) => !high)
    const [low, high] = turns.slice(first, first + 2)
    if (!low || !high) throw new Error('no tide')
    for (let hour = 0; hour <= 6; hour++) {
      const height = tide.at(low.timeMs + (hour / 6) * (high.timeMs - low.timeMs)) - low.value
      const range = high.value - low.value
      expect(Math.abs(twelfthsHeight(range, hour) - height)).toBeLessThan(0.02 * range)
    }
  })

  test('a sine stream is a 50/90 stream within 4 % of its strongest', () => {
    const run = [-1, 1].map((value, i) => ({ timeMs: start + i * 6 * hourMs, value, high: i === 1 }))
    const stream = sineStream(run, { rangeM: 2, rate: 1 }, { rangeM: 0, rate: 0 }, 0)
    for (let hour = 0; hour <= 6; hour++)
      expect(Math.abs(fiftyNinetyRate(1, hour) - stream.at(start + hour * hourMs))).toBeLessThan(0.04)
  })
})

describe('plain tide of given ranges', () => {
  test('its spring and neap ranges are those asked for', () => {
    // Twice the node cycle's slow change in M2 is ± 3.7 %; the middle of it is what the ranges mean.
    const tide = harmonicSum(modelTide(4, 2), 2)
    const turns = turningPoints(tide, start, start + 60 * dayMs, 0.01)
    const ranges = turns.slice(1).map(({ value }, i) => Math.abs(value - (turns[i]?.value ?? 0)))
    expect(Math.max(...ranges)).toBeGreaterThan(4 * 0.96)
    expect(Math.max(...ranges)).toBeLessThan(4 * 1.04)
    expect(Math.min(...ranges)).toBeGreaterThan(2 * 0.9)
    expect(Math.min(...ranges)).toBeLessThan(2 * 1.1)
  })

  test('ranges read back from its constants', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.1, max: 12, noNaN: true }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (spring, part) => {
          const { springM, neapM } = meanRanges(modelTide(spring, spring * part))
          expect(springM).toBeCloseTo(spring, 9)
          expect(neapM).toBeCloseTo(spring * part, 9)
        },
      ),
    )
  })

  test('a subordinate’s ranges carry its offsets', () => {
    const offsets = { reference: 'x', highMinutes: 0, lowMinutes: 0 }
    const here = stationRanges({
      ...fridayHarbor,
      offsets: { ...offsets, kind: 'ratio', high: 1.5, low: 1.5 },
    })
    expect(here.springM).toBeCloseTo(1.5 * meanRanges(fridayHarbor.constituents).springM, 9)
  })

  test('where the daily terms rule, the daily ranges stand for springs and neaps', () => {
    expect(
      meanRanges([
        ['M2', 0.02, 0],
        ['K1', 0.3, 0],
        ['O1', 0.2, 0],
      ]),
    ).toEqual({
      springM: expect.closeTo(1, 9) as number,
      neapM: expect.closeTo(0.2, 9) as number,
    })
  })
})

describe('stream of half sines', () => {
  const tide = harmonicSum(modelTide(4, 2), 2)
  const turns = turningPoints(tide, start - 2 * dayMs, start + 32 * dayMs, 0.01)
  const stream = (lagH: number) => sineStream(turns, { rangeM: 4, rate: 1.2 }, { rangeM: 2, rate: 0.6 }, lagH)

  test('slack follows high and low water by the lag, and each run is as strong as its range says', () => {
    const events = streamEvents(stream(1.5), start, start + 30 * dayMs)
    for (const { timeMs, next, kind } of events) {
      if (kind !== 'slack') continue
      const turn = turns.find((known) => Math.abs(known.timeMs + 1.5 * hourMs - timeMs) < minuteMs)
      expect(turn?.high).toBe(next === 'ebb')
    }
    const strongest = Math.max(...events.map(({ mps }) => Math.abs(mps)))
    expect(strongest).toBeGreaterThan(1.2 * 0.95)
    expect(strongest).toBeLessThan(1.2 * 1.05)
  })

  test('is still outside what the tide covers', () => {
    expect(stream(0).at(start - 20 * dayMs)).toBe(0)
  })
})
