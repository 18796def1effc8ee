import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { arbitraryPot } from '../../tests/fixtures/arbitrary-pot'
import type { Pot } from '@shared/schema/pot'
import type { UnitSystem } from '@shared/units/locale'
import { billOfMaterials, wrapLength } from './bill-of-materials'
import { consistency } from './consistency'
import { cutList } from './cut-list'
import { foldedSize } from './folded-size'
import { haulPoint } from './haul-point'
import { builtInMaterials, withOwnMaterials } from './materials/built-in'
import { shapeOf } from './shape'
import { nettingSolidity } from './solidity'
import { starterPots } from './starter-pots'
import { stowFit } from './stow-fit'

const starter = (id: string): Pot => {
  const pot = starterPots.find((p) => p.id === id)
  if (!pot) throw new Error(id)
  return pot
}
const standard = starter('starter-standard')

describe('bill of materials', () => {
  const bill = billOfMaterials(standard, builtInMaterials)
  const of = (part: string) => bill.filter((line) => line.part === part)

  test('a base ring of 900 mm takes π·0.9 m of bar', () => {
    expect(of('base-ring')[0]?.quantity).toBeCloseTo(Math.PI * 0.9, 6)
  })

  test('stretched netting is twice the hung area when hung square', () => {
    const net = of('netting').find((line) => line.unit === 'm2')
    // Wall π(0.45+0.43)·0.3206 less two entrances, base, top, two funnels of about 0.16 m2.
    const wall = Math.PI * 0.88 * Math.hypot(0.32, 0.02) - 2 * 0.3 * 0.13
    const plain = wall + Math.PI * (0.45 ** 2 + 0.43 ** 2)
    expect(net?.quantity).toBeGreaterThan(2 * plain)
    expect(net?.quantity).toBeLessThan(2 * (plain + 0.4))
  })

  test('rope and float are on it', () => {
    expect(of('rope')[0]).toMatchObject({ quantity: 22, unit: 'm' })
    expect(of('float')[0]).toMatchObject({ quantity: 1, massKg: 0.35 })
  })

  test('a wrap of 6 mm rope over 1 m of 12 mm bar is π·18 mm a turn, a turn every 6 mm', () => {
    expect(wrapLength(1, 0.012, 0.006)).toBeCloseTo((1 / 0.006) * Math.hypot(Math.PI * 0.018, 0.006), 9)
  })

  test("prices are the user's", () => {
    const own = withOwnMaterials({
      format: 'potwright/materials',
      version: 1,
      prices: [{ id: 'pes', each: 'metre', amount: 1.2, currency: 'AUD' }],
    })
    const rope = billOfMaterials(standard, own).find((line) => line.part === 'rope')
    expect(rope).toMatchObject({ priceEach: 1.2, currency: 'AUD' })
    expect(bill.some((line) => line.priceEach !== undefined)).toBe(false)
  })
})

describe('cut list', () => {
  test('the wall of a 3-4-5 cone opens to a sector of 0.667 and 0.167 m over 216°', () => {
    const cone: Pot = {
      ...standard,
      body: { shape: 'cone', baseDiameterMm: 800, topDiameterMm: 200, heightMm: 400, folds: false, feet: 0 },
    }
    const wall = cutList(cone).panels.find((panel) => panel.name === 'wall')
    expect(wall?.shape).toMatchObject({ kind: 'sector' })
    if (wall?.shape.kind !== 'sector') throw new Error('sector')
    expect(wall.shape.outerRadiusM).toBeCloseTo(2 / 3, 6)
    expect(wall.shape.innerRadiusM).toBeCloseTo(1 / 6, 6)
    expect(wall.shape.angleDeg).toBeCloseTo(216, 6)
  })

  test('a straight wall is a strip of girth by height, 57 meshes round for a 900 mm pot of 35 mm bar', () => {
    const round: Pot = {
      ...standard,
      body: { shape: 'round', baseDiameterMm: 900, topDiameterMm: 900, heightMm: 320, folds: true, feet: 0 },
    }
    const wall = cutList(round).panels.find((panel) => panel.name === 'wall')
    expect(wall?.shape).toMatchObject({ kind: 'strip', widthM: 0.32 })
    expect(wall?.meshesLong).toBe(Math.round((Math.PI * 900) / (2 * 35 * 0.7071)))
  })
})

describe('solidity', () => {
  const net = { material: 'PE', twineDiameterMm: 2, barLengthMm: 25, knotted: false } as const
  test('square hung, knotless: 2·0.08 - 0.0064', () => {
    expect(nettingSolidity({ ...net, hangingRatio: Math.SQRT1_2 })).toBeCloseTo(0.1536, 4)
  })
  test('knots bring it to 2·0.08 + 0.5·0.0064', () => {
    expect(nettingSolidity({ ...net, knotted: true })).toBeCloseTo(0.1632, 4)
  })
  test('growth thickens it, and it never passes 1', () => {
    expect(nettingSolidity(net, 1.5)).toBeGreaterThan(nettingSolidity(net))
    expect(nettingSolidity({ ...net, twineDiameterMm: 8, barLengthMm: 5, knotted: true }, 3)).toBe(1)
  })
})

describe('folding and stowing', () => {
  test('the standard round folds to its rings, wrap, strut and netting', () => {
    // Base ring 12 + 2·6, top ring 10, strut 8, netting 12·1.5.
    expect(foldedSize(standard).heightM).toBeCloseTo(0.024 + 0.01 + 0.008 + 0.018, 6)
    expect(foldedSize(standard).lengthM).toBeCloseTo(0.924, 6)
  })
  test('a pot that does not fold stands as high as it is', () => {
    expect(foldedSize(starter('starter-cone')).heightM).toBeGreaterThan(0.4)
  })
  test('eight flat pots in a locker for eight, six by load', () => {
    const size = { lengthM: 0.9, widthM: 0.9, heightM: 0.06, folds: true }
    const space = { lengthM: 1, widthM: 1, heightM: 0.5, maxKg: 60 }
    expect(stowFit(size, 5, space)).toEqual({ bySize: 8, byLoad: 12, count: 8 })
    expect(stowFit(size, 10, space).count).toBe(6)
    expect(stowFit(size, 5, { ...space, lengthM: 0.8 }).count).toBe(0)
    expect(stowFit(size, 5, { ...space, lengthM: 0.5, heightM: 1 }).count).toBe(8)
  })
})

describe('haul point', () => {
  test('on the top ring at bearing 90°, it lies at -y', () => {
    const { position } = haulPoint(standard, shapeOf(standard.body))
    expect(position[0]).toBeCloseTo(0, 9)
    expect(position[1]).toBeCloseTo(-0.43, 9)
    expect(position[2]).toBeCloseTo(0.32, 9)
  })
  test('legs over the middle meet above the top', () => {
    const central: Pot = { ...standard, bridle: { legs: 4, bearingDeg: 0, attach: 'top-centre' } }
    expect(haulPoint(central, shapeOf(central.body)).position).toEqual([0, 0, 0.32 + 0.215])
  })
})

describe('contradictions', () => {
  const paths = (pot: Pot) => consistency(pot, builtInMaterials).map((issue) => issue.path)
  test('none in the starting shapes', () => {
    for (const pot of starterPots) expect(consistency(pot, builtInMaterials)).toEqual([])
  })
  test('sizes are said in the reader’s units, to three figures', () => {
    const wide: Pot = {
      ...standard,
      entrances: [{ kind: 'funnel', widthMm: 1234.5678, heightMm: 130, bearingDeg: 0, sillMm: 30 }],
    }
    const said = (units: UnitSystem) =>
      consistency(wide, builtInMaterials, { units, decimalMark: ',' })[0]?.message
    expect(said('metric')).toBe('This entrance is 1230 mm wide; the pot is 896 mm there.')
    expect(said('imperial')).toBe('This entrance is 48,6 in wide; the pot is 35,3 in there.')
  })
  const entrance = { kind: 'funnel', widthMm: 300, heightMm: 130, bearingDeg: 0, sillMm: 30 } as const
  test.each<[string, Partial<Pot>]>([
    ['entrances.0.widthMm', { entrances: [{ ...entrance, widthMm: 1200 }] }],
    ['entrances.0.heightMm', { entrances: [{ ...entrance, heightMm: 300 }] }],
    ['entrances.0.sillMm', { entrances: [{ ...entrance, sillMm: 400 }] }],
    [
      'escapeGaps.0.bottomEdgeMm',
      { escapeGaps: [{ shape: 'circle', diameterMm: 108, count: 1, bottomEdgeMm: 250 }] },
    ],
    [
      'netting.twineDiameterMm',
      { netting: { material: 'PE', twineDiameterMm: 8, barLengthMm: 6, knotted: true } },
    ],
    [
      'float.massKg',
      {
        float: {
          shape: 'sphere',
          diameterMm: 100,
          massKg: 5,
          material: 'PVC',
          colours: ['red'],
          pattern: 'solid',
        },
      },
    ],
    [
      'float.diameterMm',
      {
        float: {
          shape: 'sphere',
          diameterMm: 60,
          massKg: 0.05,
          material: 'PVC',
          colours: ['red'],
          pattern: 'solid',
        },
        rope: { material: 'lead-core', construction: 'braid', diameterMm: 12, lengthM: 100 },
      },
    ],
    ['bait.heightMm', { bait: { holder: 'clip', massKg: 0.3, at: 'centre', heightMm: 500 } }],
    ['doors', { doors: [{ where: 'top', purpose: 'bait' }] }],
  ])('%s', (path, change) => {
    expect(paths({ ...standard, ...change })).toContain(path)
  })
  test('every message is a sentence, for any design', () => {
    fc.assert(
      fc.property(arbitraryPot, (pot) => {
        for (const issue of consistency(pot, builtInMaterials)) {
          expect(issue.message).toMatch(/^[A-Z].*[.?]$/)
          expect(issue.message).not.toMatch(/NaN|undefined|Infinity/)
        }
        for (const line of billOfMaterials(pot, builtInMaterials))
          expect(Number.isFinite(line.quantity)).toBe(true)
      }),
      { numRuns: 200 },
    )
  })
})
