import { describe, expect, test } from 'vitest'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { standing } from '@shared/physics/holding/standing-pot'
import { solveLine } from '@shared/physics/line/line'
import type { Water } from '@shared/schema/water'
import { conditionsAt } from '@shared/tides/conditions'
import { waterSeries } from '@shared/tides/predict-water'
import { dayMs } from '@shared/tides/signal'
import { lineIn, prepare, standingIn } from '@shared/verdicts/prepared'
import { bellinghamChannel, fridayHarbor } from '../../tests/fixtures/station-constants'
import { strengthOf } from './bands'
import { matchCell, matchCells, ranked, type MatchSetting } from './match'
import { matchWater } from './match-water'
import { potLimits } from './pot-limits'
import { limitAt } from './thresholds'

const constants = { tide: fridayHarbor, current: bellinghamChannel }
const from = Date.UTC(2026, 5, 1)
const span = { fromMs: from, toMs: from + 30 * dayMs }
const channel: Water = {
  format: 'potwright/water',
  version: 1,
  id: 'channel',
  name: 'Heron Narrows',
  region: 'US-WA',
  depthM: 10,
  bottom: 'sand',
  tide: { source: 'station', id: 'noaa/9449880' },
  current: { source: 'station', id: 'noaa/PUG1741' },
}
const creek: Water = {
  ...channel,
  id: 'creek',
  name: 'Mill Creek',
  depthM: 4,
  current: { source: 'fixed', mps: 0.2 },
}
const setting: MatchSetting = {
  materials: builtInMaterials,
  coefficients: defaultCoefficients,
  packFor: () => undefined,
}
const places = [channel, creek].map((water) => matchWater(water, constants, span))
const cells = [...matchCells(starterPots, places, setting)]

describe('limits by depth', () => {
  // A fixed walk over the month: the same moments every time.
  const series = waterSeries(channel, constants, span, 300)
  const strength = strengthOf(series) ?? new Float64Array()
  const moments = Array.from({ length: 60 }, (_, i) => (i * 1327) % strength.length)

  test.each(starterPots.map((pot) => [pot.name, pot] as const))(
    '%s: is the direct solution, moment by moment',
    (_, pot) => {
      const conditions = conditionsAt({ ...channel, current: { source: 'fixed', mps: 1 } })
      const input = { ...setting, pot, conditions }
      const place = places[0]
      if (!place) throw new Error('no place')
      const prepared = prepare(input)
      const { holds, shows } = potLimits(input, 'cautious', place.ladder)
      if (!holds || !shows) throw new Error('no limits')
      for (const i of moments) {
        const [mps, depth] = [strength[i] ?? 0, series.depthM[i] ?? 0]
        const pot = standing(standingIn(prepared, 'cautious', depth, mps, 'sand'))
        const stays = Math.min(pot.slideFactor, pot.tipFactor) >= 1
        const line = lineIn(prepared, prepared.sets.cautious, depth, mps)
        const solved = line && solveLine(line)
        const reserve = prepared.sets.cautious.floatReserve
        const up =
          solved?.state === 'surface' && solved.verticalN * reserve <= solved.verticalN + solved.reserveN
        // Within one part in a hundred of the limit the ladder's straight lines may decide otherwise.
        if (Math.abs(mps / limitAt(holds, depth) - 1) > 0.01) expect(mps <= limitAt(holds, depth)).toBe(stays)
        if (Math.abs(mps / limitAt(shows, depth) - 1) > 0.01) expect(mps <= limitAt(shows, depth)).toBe(up)
      }
    },
  )
})

describe('match', () => {
  test('one cell for every design at every water, each with its reason', () => {
    expect(cells.length).toBe(starterPots.length * 2)
    for (const cell of cells) {
      expect(cell.reason.length).toBeGreaterThan(10)
      expect(cell.bothShare).toBeLessThanOrEqual(Math.min(cell.holdsShare ?? 1, cell.showsShare ?? 1))
    }
  })

  test('a cell is the same whether or not other waters were matched before it', () => {
    for (const pot of starterPots)
      for (const place of places) {
        const cell = cells.find(({ potId, waterId }) => potId === pot.id && waterId === place.water.id)
        expect(matchCell(pot, place, setting)).toEqual(cell)
      }
  })

  test('a pot that holds cautiously at the strongest current holds all the time, and one that does not, does not', () => {
    for (const { states, holdsShare, marginMps } of cells) {
      if (states.holdsBottom === 'holds') expect(holdsShare).toBeGreaterThan(0.99)
      else expect(holdsShare).toBeLessThan(1)
      if ((marginMps ?? 0) > 0.02) expect(holdsShare).toBe(1)
    }
  })

  test('a creek is kinder than the channel to every design', () => {
    for (const pot of starterPots) {
      const [inChannel, inCreek] = ['channel', 'creek'].map((id) =>
        cells.find(({ potId, waterId }) => potId === pot.id && waterId === id),
      )
      expect(inCreek?.holdsShare).toBeGreaterThanOrEqual(inChannel?.holdsShare ?? 1)
      expect(inCreek?.marginMps).toBeGreaterThan(inChannel?.marginMps ?? 0)
      expect(inCreek?.ringMassNeededKg).toBeLessThanOrEqual(inChannel?.ringMassNeededKg ?? 0)
    }
  })

  test('no rules for a region is "cannot tell", never legal', () => {
    for (const { states } of cells) expect(states.legal).toBe('cannot-tell')
  })

  test('the ranking puts the better verdict first, then the larger share', () => {
    const inChannel = ranked(cells.filter(({ waterId }) => waterId === 'channel'))
    const order = { holds: 0, close: 1, 'cannot-tell': 2, fails: 3 }
    inChannel.slice(1).forEach((cell, i) => {
      const before = inChannel[i]
      expect(order[cell.overall]).toBeGreaterThanOrEqual(order[before?.overall ?? 'fails'])
      if (cell.overall === before?.overall) expect(cell.bothShare).toBeLessThanOrEqual(before.bothShare ?? 0)
    })
    expect(ranked([...cells].reverse())).toEqual(ranked(cells))
  })

  test('where the bottom or the current is not known, shares are left out', () => {
    const [pot] = starterPots
    if (!pot) throw new Error('no pot')
    const bare = { ...creek, bottom: undefined }
    const unknownBottom = matchCell(pot, matchWater(bare, constants, span), setting)
    expect([unknownBottom.holdsShare, unknownBottom.bothShare]).toEqual([undefined, undefined])
    expect(unknownBottom.states.holdsBottom).toBe('cannot-tell')
    const unknownCurrent = matchCell(pot, matchWater(channel, {}, span), setting)
    expect(unknownCurrent).toMatchObject({
      holdsShare: undefined,
      showsShare: undefined,
      marginMps: undefined,
    })
  })
})
