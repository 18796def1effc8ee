import fc from 'fast-check'
import * as v from 'valibot'
import { describe, expect, test } from 'vitest'
import { arbitraryPot, completePot } from '../../tests/fixtures/arbitrary-pot'
import {
  channel,
  starter,
  standard,
  trip,
  without,
  check,
  figure,
  slides,
  finding,
} from '../../tests/fixtures/checked-pot'
import { massProperties, submergedWeight } from '@shared/design/mass-properties'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { bottoms } from '@shared/schema/water'
import { CheckSchema } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Conditions } from '@shared/tides/conditions'

describe('a pot worked by hand', () => {
  // Two rings and netting, tied off so that no rope pulls, on sand in 10 m, 1 m/s at the surface.
  const plain: Pot = {
    format: 'potwright/pot',
    version: 1,
    id: 'plain',
    name: 'Plain round',
    gearKind: 'pot',
    body: { shape: 'round', baseDiameterMm: 800, topDiameterMm: 800, heightMm: 300, folds: false, feet: 0 },
    frame: [{ role: 'base-ring', material: 'steel-black', barDiameterMm: 12 }],
    netting: { material: 'PE', twineDiameterMm: 2, barLengthMm: 20, knotted: false },
  }
  const result = check(plain, {
    conditions: { ...channel, surfaceCurrentMps: 1, depthLowM: 10, depthHighM: 10 },
    trip: { format: 'potwright/trip', version: 1, tiedOff: true },
  })

  test('weight: 2.232 kg of steel and 0.171 kg of PE, 19.2 N in the water', () => {
    // Steel π·0.8·0.888 = 2.2318 kg at 7850; netting 2·1.975e-3/0.02·(0.754 + 2·0.5027) = 0.3475 kg at 950.
    const steel = Math.PI * 0.8 * 0.888
    const net = ((2 * 1.975e-3) / 0.02) * (Math.PI * 0.8 * 0.3 + 2 * Math.PI * 0.16)
    const steelVolume = Math.PI * 0.8 * (Math.PI / 4) * 0.012 ** 2
    const byHand = 9.81 * (steel + net - 1025 * (steelVolume + net / 950))
    const mass = massProperties(plain, builtInMaterials)
    expect(submergedWeight(mass, 1025, 9.81)).toBeCloseTo(byHand, 1)
    expect(result.verdicts.holdsBottom.figures?.['submergedWeightN']).toBeCloseTo(byHand, 1)
  })

  test('drag: 0.24 m2 of netting front and back, slowed behind, top and base along, one ring', () => {
    // Sn = 2·0.1 - 0.01 = 0.19; Cd = 0.04 + (-0.04 + Sn - 1.24 Sn² + 13.7 Sn³) = 0.2392; r = 1 - 0.46 Cd = 0.890.
    const sn = 0.19
    const cd = sn - 1.24 * sn ** 2 + 13.7 * sn ** 3
    const r = 1 - 0.46 * cd
    const square = (from: number, to: number) =>
      ((7 / 9) * (to ** (9 / 7) - from ** (9 / 7))) / ((to - from) * 10 ** (2 / 7))
    const wall = 0.24 * cd * (1 + r * r) * square(0, 0.3)
    const level = 0.04 * Math.PI * 0.16 * ((0.3 / 10) ** (2 / 7) + square(0, 0.01))
    const ring = 2 * 1.2 * 0.8 * 0.012 * square(0, 0.012)
    const byHand = 0.5 * 1025 * (wall + level + ring)
    expect(figure(result, 'holdsBottom', 'dragN').mid / byHand).toBeCloseTo(1, 2)
    // Grip 0.4 on sand, no lift.
    const weight = Number(result.verdicts.holdsBottom.figures?.['submergedWeightN'])
    expect(figure(result, 'holdsBottom', 'slideFactor').mid / ((0.4 * weight) / byHand)).toBeCloseTo(1, 2)
  })

  test('without a rope the sliding current is the current over the root of the load', () => {
    const factor = figure(result, 'holdsBottom', 'slideFactor').mid
    expect(figure(result, 'holdsBottom', 'slideCurrentMps').mid).toBeCloseTo(Math.sqrt(factor), 2)
  })
})

describe('the starting shapes', () => {
  test('the standard round holds to about 0.6 m/s on sand, the heavy one to more, the compact one to less', () => {
    expect(slides(standard).mid).toBeGreaterThan(0.5)
    expect(slides(standard).mid).toBeLessThan(0.8)
    expect(slides(starter('starter-heavy')).mid).toBeGreaterThan(slides(standard).mid)
    expect(slides(starter('starter-compact')).mid).toBeLessThan(slides(standard).mid)
  })
})

describe('cannot tell, with what is missing', () => {
  test.each([
    ['rope', 'holdsBottom', 'the rope'],
    ['float', 'floatShows', 'the float'],
    ['frame', 'holdsBottom', 'the frame'],
    ['netting', 'lifts', 'the netting'],
  ] as const)('no %s: %s', (key, verdict, missing) => {
    const { state, findings } = check(without(key)).verdicts[verdict]
    expect(state).toBe('cannot-tell')
    expect(findings[0]?.missing).toContain(missing)
  })
  test('no current, no bottom, no space, no rules', () => {
    const { verdicts } = check(standard, { conditions: { missing: 'the current at this water' } })
    expect(verdicts.holdsBottom.findings[0]?.missing).toBe('the current at this water')
    expect(verdicts.floatShows.state).toBe('cannot-tell')
    expect(verdicts.stows.findings[0]?.missing).toBe('the space for gear')
    expect(verdicts.legal.state).toBe('cannot-tell')
    expect(verdicts.fishes.state).toBe('cannot-tell')
    const muddled = check(standard, { conditions: { ...channel, bottom: undefined } })
    expect(muddled.verdicts.holdsBottom.findings[0]?.missing).toBe('the bottom')
  })
  test('water no deeper than the pot is high', () => {
    const shallow = check(standard, { conditions: { ...channel, depthLowM: 0, depthHighM: 0.2 } })
    expect(shallow.verdicts.holdsBottom.state).toBe('cannot-tell')
    expect(finding(shallow, 'floatShows', 'float:shows')?.what).toBe(
      'Cannot tell: the pot, 0.32 m high, stands in no more than 0.2 m of water.',
    )
  })
  test('without a tide, how deep it gets at high water, so the float may not show', () => {
    const tideless = check(standard, {
      conditions: { ...channel, depthHighM: 8, missingTide: 'the tide at this water' },
    }).verdicts.floatShows
    expect(tideless.state).toBe('cannot-tell')
    expect(tideless.findings[0]?.what).toMatch(/^Shows in .* at the depth given/)
    expect(tideless.findings.find((f) => f.rule === 'float:tide')?.missing).toBe('the tide at this water')
  })
})

describe('for any design', () => {
  const water = fc.record({
    surfaceCurrentMps: fc.double({ min: 0, max: 6, noNaN: true }),
    depthLowM: fc.double({ min: 0, max: 400, noNaN: true }),
    range: fc.double({ min: 0, max: 18, noNaN: true }),
    bottom: fc.constantFrom(...bottoms),
    waves: fc.option(
      fc.record({
        heightM: fc.double({ min: 0, max: 8, noNaN: true }),
        periodS: fc.double({ min: 1, max: 25, noNaN: true }),
      }),
      { nil: undefined },
    ),
  })
  const conditionsOf = ({
    range,
    ...rest
  }: { range: number; depthLowM: number } & Omit<
    Conditions,
    'depthHighM' | 'temperatureC' | 'salinityPsu' | 'basis'
  >): Conditions => ({
    ...channel,
    ...rest,
    depthHighM: rest.depthLowM + range,
  })

  test('the check has its published form, finite numbers, and sentences that read', () => {
    fc.assert(
      fc.property(arbitraryPot, water, (pot, sea) => {
        const result = check(pot, { conditions: conditionsOf(sea), trip })
        expect(v.is(CheckSchema, result)).toBe(true)
        for (const { findings, figures, state } of Object.values(result.verdicts)) {
          for (const { what, margin } of findings) {
            expect(what).toMatch(/^[A-Z0-9].*\.$/)
            expect(what).not.toMatch(/NaN|undefined|Infinity|–|!/)
            if (margin !== undefined) expect(Number.isFinite(margin)).toBe(true)
          }
          for (const value of Object.values(figures ?? {}))
            for (const n of typeof value === 'number'
              ? [value]
              : Array.isArray(value)
                ? value
                : Object.values(value))
              expect(Number.isFinite(n)).toBe(true)
          if (state === 'cannot-tell') expect(findings.some((f) => f.missing !== undefined)).toBe(true)
        }
      }),
      { numRuns: 250 },
    )
  }, 60_000)

  test('a heavier ring raises the sliding current, a rope twice as thick lowers it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...starterPots),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (pot, mps) => {
          const sea = { conditions: { ...channel, surfaceCurrentMps: mps } }
          const frame = (pot.frame ?? []).map((m) =>
            m.role === 'base-ring' ? { ...m, barDiameterMm: m.barDiameterMm * 1.4 } : m,
          )
          const now = slides(pot, sea).mid
          expect(slides({ ...pot, frame }, sea).mid).toBeGreaterThan(now)
          const rope = pot.rope && { ...pot.rope, diameterMm: 2 * pot.rope.diameterMm }
          expect(slides({ ...pot, ...(rope && { rope }) }, sea).mid).toBeLessThan(now)
        },
      ),
      { numRuns: 25 },
    )
  }, 60_000)

  test('growth on the netting never helps it to hold', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...starterPots),
        fc.double({ min: 1, max: 2.5, noNaN: true }),
        (pot, foulingFactor) => {
          expect(slides(pot, { wear: { foulingFactor } }).mid).toBeLessThanOrEqual(slides(pot).mid * 1.003)
        },
      ),
      { numRuns: 25 },
    )
  }, 60_000)

  test('the outlooks stay in order: cautious slides first', () => {
    fc.assert(
      fc.property(completePot, (pot) => {
        const { figures } = check(pot).verdicts.holdsBottom
        if (!figures?.['slideCurrentMps']) return
        const { low, mid, high } = slides(pot)
        expect(low).toBeLessThanOrEqual(mid * 1.01 + 1e-6)
        expect(mid).toBeLessThanOrEqual(high * 1.01 + 1e-6)
      }),
      { numRuns: 120 },
    )
  }, 60_000)
})
