import { describe, expect, test } from 'vitest'
import { PotSchema } from '@shared/schema/pot'
import { quantityNames, type QuantityName } from '@shared/schema/rule-quantities'
import * as v from 'valibot'
import { goldenCases } from '../../../tests/fixtures/golden'
import type { Facts } from '../facts'
import { quantityReaders } from '.'
import { freeboardMm, floatVolumeL } from './freeboard'

const golden = goldenCases.find((one) => one.region === 'US-WA')
if (!golden) throw new Error('no golden pot')
const pot = (parts: object) => v.parse(PotSchema, { ...golden.pot, ...parts })
const read = (name: QuantityName, facts: Partial<Facts>) =>
  quantityReaders[name]({ pot: golden.pot, ...facts })

describe('float', () => {
  const sphere = (diameterMm: number, massKg: number) => ({
    shape: 'sphere' as const,
    diameterMm,
    massKg,
    material: 'PVC' as const,
    colours: ['white' as const],
    pattern: 'solid' as const,
  })

  test('a sphere displaces what the handbook has: 42.1 N at 200 mm, 142.2 N at 300 mm', () => {
    // Displaced force at 1025 kg/m³, g 9.80665.
    const newtons = (diameterMm: number) => floatVolumeL(sphere(diameterMm, 0.1)) * 1.025 * 9.80665
    expect(newtons(200)).toBeCloseTo(42.1, 1)
    expect(newtons(300)).toBeCloseTo(142.1, 1)
  })

  test('half its buoyancy in load sinks a sphere to its middle; all of it sinks it', () => {
    const float = sphere(200, 0)
    const all = floatVolumeL(float) * 1.025
    expect(freeboardMm(float, all / 2)).toBeCloseTo(100, 6)
    expect(freeboardMm(float, all)).toBe(0)
    expect(freeboardMm(float, 0)).toBeCloseTo(200, 6)
  })

  test('a cylinder stands out by the share that is dry', () => {
    const float = { ...sphere(100, 0), shape: 'cylinder' as const, lengthMm: 300 }
    expect(freeboardMm(float, (floatVolumeL(float) * 1.025) / 3)).toBeCloseTo(200, 6)
  })
})

describe('mesh', () => {
  const netting = { material: 'PE', twineDiameterMm: 1.5, barLengthMm: 25, knotted: true }
  const chafe = (kind: string, thicknessMm?: number) => ({
    chafe: { kind, ...(thicknessMm === undefined ? {} : { thicknessMm }), on: ['base-ring'] },
  })

  test('one mesh, three measures', () => {
    const facts = { pot: pot({ netting: { ...netting, hangingRatio: Math.SQRT1_2 } }) }
    expect(read('mesh.bar', facts)).toEqual({ value: 25 })
    expect(read('mesh.stretched', facts)).toEqual({ value: 50 })
    expect(read('mesh.diagonal', facts)).toMatchObject({ value: expect.closeTo(35.36, 2) })
  })

  test('a mesh hung slack is longer one way, up to the stretched mesh', () => {
    const facts = { pot: pot({ netting: { ...netting, hangingRatio: 0.6 } }) }
    expect(read('mesh.diagonal', facts)).toMatchObject({ value: expect.closeTo(40, 6) })
  })

  test('a wrap takes its thickness, a second netting half; not stated is not known', () => {
    const narrowed = (part: object) => read('mesh.narrowed-bar', { pot: pot({ netting, ...part }) })
    expect(narrowed(chafe('none'))).toEqual({ value: 25 })
    expect(narrowed(chafe('rope-wrap', 8))).toEqual({ value: 17 })
    expect(narrowed(chafe('double-netting'))).toEqual({ value: 12.5 })
    expect(narrowed(chafe('hose'))).toHaveProperty('missing')
    expect(narrowed({})).toHaveProperty('missing')
  })
})

describe('rope', () => {
  const rope = (parts: object) =>
    pot({ rope: { material: 'PP', construction: '3-strand', diameterMm: 8, lengthM: 18, ...parts } })
  const water = { format: 'potwright/water' as const, version: 1 as const, id: 'w', name: 'W', depthM: 12 }

  test('sinking rope never floats; floating rope does by its slack', () => {
    expect(read('rope.floating-length', { pot: rope({ material: 'PES' }) })).toEqual({ value: 0 })
    expect(read('rope.floating-length', { pot: rope({ weights: [] }), water })).toEqual({ value: 6000 })
    expect(read('rope.floating-length', { pot: rope({ weights: [] }) })).toHaveProperty('missing')
    expect(read('rope.floating-length', { pot: rope({}), water })).toHaveProperty('missing')
  })

  test('a weight holds down twice its depth of slack, if it outweighs the lift of that rope', () => {
    const weighted = (massKg: number, belowFloatM: number) =>
      read('rope.floating-length', { pot: rope({ weights: [{ massKg, belowFloatM }] }), water })
    expect(weighted(0.05, 1)).toEqual({ value: 4000 })
    expect(weighted(0.05, 3)).toEqual({ value: 0 })
    expect(weighted(0.005, 3)).toEqual({ value: 6000 })
  })
})

describe('escape gaps and entrances', () => {
  const gap = (parts: object) => ({ shape: 'circle', diameterMm: 108, count: 1, bottomEdgeMm: 190, ...parts })

  test('gaps on opposite sides need their bearings', () => {
    const opposite = (gaps: object[]) => read('gaps.opposite', { pot: pot({ escapeGaps: gaps }) })
    expect(opposite([gap({ bearingDeg: 10 }), gap({ bearingDeg: 190 })])).toEqual({ value: true })
    expect(opposite([gap({ bearingDeg: 10 }), gap({ bearingDeg: 100 })])).toEqual({ value: false })
    expect(opposite([gap({ count: 2 })])).toHaveProperty('missing')
    expect(opposite([gap({})])).toEqual({ value: false })
  })

  test('each chamber is counted by itself', () => {
    const perChamber = (chambers: number | undefined, gaps: object[]) =>
      read('gaps.per-chamber', { pot: pot({ ...(chambers ? { chambers } : {}), escapeGaps: gaps }) })
    expect(perChamber(2, [gap({ chamber: 1, count: 2 }), gap({ chamber: 2 })])).toEqual({ value: 1 })
    expect(perChamber(1, [gap({ count: 2 })])).toEqual({ value: 2 })
    expect(perChamber(2, [gap({ count: 2 })])).toHaveProperty('missing')
    expect(perChamber(undefined, [gap({ count: 2 })])).toHaveProperty('missing')
  })

  test('a haul point over an entrance is seen across north', () => {
    const entrance = { kind: 'funnel', widthMm: 300, heightMm: 130, bearingDeg: 350, sillMm: 30 }
    const over = (bearingDeg: number) =>
      read('entrances.over-haul-point', {
        pot: pot({ entrances: [entrance], bridle: { legs: 2, bearingDeg, attach: 'top-ring' } }),
      })
    expect([over(5), over(90)]).toEqual([{ value: true }, { value: false }])
  })

  test('an entrance that stands on end is less wide than high', () => {
    const aspect = (widthMm: number, heightMm: number) =>
      read('entrance.aspect', { entrance: { kind: 'funnel', widthMm, heightMm, bearingDeg: 0, sillMm: 0 } })
    expect([aspect(150, 100), aspect(100, 150)]).toEqual([
      { value: 1.5 },
      { value: expect.closeTo(2 / 3, 9) },
    ])
  })

  test('a turtle frame narrows the way in; without a word on it nothing is known', () => {
    const entrance = (excluder?: unknown) =>
      v.parse(PotSchema, {
        ...golden.pot,
        entrances: [
          {
            kind: 'funnel',
            widthMm: 200,
            heightMm: 100,
            bearingDeg: 0,
            sillMm: 0,
            ...(excluder ? { excluder } : {}),
          },
        ],
      }).entrances?.[0]
    const throat = (excluder?: unknown) => {
      const one = entrance(excluder)
      return read('entrance.throat-height', one ? { entrance: one } : {})
    }
    expect(throat({ widthMm: 120, heightMm: 44 })).toEqual({ value: 44 })
    expect(throat('none')).toEqual({ value: 100 })
    expect(throat()).toHaveProperty('missing')
  })
})

test('a pot with nothing but a body leaves every part unknown, and none of them is a bug', () => {
  const bare = v.parse(PotSchema, {
    format: 'potwright/pot',
    version: 1,
    id: 'bare',
    name: 'Bare',
    gearKind: 'pot',
    body: golden.pot.body,
  })
  const whole = quantityNames.filter(
    (name) => !/^(entrance|gap|rope-weight)\./.test(name) && !/^body\./.test(name),
  )
  const readings = whole.map((name) => quantityReaders[name]({ pot: bare }))
  expect(readings.filter((reading) => 'value' in reading)).toEqual([])
})
