import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { arbitraryPot } from '../../../tests/fixtures/arbitrary-pot'
import type { Pot } from '@shared/schema/pot'
import { starterPots } from '../starter-pots'
import { potGeometry } from './build'
import type { MeshLines, PotGeometry } from './pot-geometry'

const starter = (id: string): Pot => {
  const pot = starterPots.find((p) => p.id === id)
  if (!pot) throw new Error(id)
  return pot
}

const panel = (geometry: PotGeometry, name: string): MeshLines => {
  const mesh = geometry.meshes.find((m) => m.panel === name)
  if (!mesh) throw new Error(name)
  return mesh
}

function* segmentsOf({ segments: s }: MeshLines) {
  for (let i = 0; i < s.length; i += 6)
    yield {
      a: [s[i] ?? NaN, s[i + 1] ?? NaN, s[i + 2] ?? NaN] as const,
      b: [s[i + 3] ?? NaN, s[i + 4] ?? NaN, s[i + 5] ?? NaN] as const,
    }
}

describe('netting follows the mesh', () => {
  const bare: Pot = { ...starter('starter-standard'), entrances: [], escapeGaps: [], doors: [] }

  test('rows on the base of a round pot are 2 a E1 E2 apart: 25.7 of them across 0.9 m of 35 mm bar', () => {
    const base = panel(potGeometry(bare), 'base')
    // Two directions, rows -12..12 each.
    expect(base.segments.length / 6).toBe(2 * (2 * Math.floor(0.45 / 0.035) + 1))
  })

  test('finer mesh, more lines', () => {
    const fine: Pot = {
      ...bare,
      netting: { material: 'PE', twineDiameterMm: 1, barLengthMm: 20, knotted: true },
    }
    expect(potGeometry(fine).lineCounts.netting).toBeGreaterThan(potGeometry(bare).lineCounts.netting ?? 0)
  })

  test('a wall run keeps to the wall', () => {
    for (const { a, b } of segmentsOf(panel(potGeometry(bare), 'wall')))
      for (const [x, y, z] of [a, b]) {
        expect(Math.hypot(x, y)).toBeCloseTo(0.45 - (0.02 * z) / 0.32, 4)
        expect(z).toBeGreaterThanOrEqual(-1e-6)
        expect(z).toBeLessThanOrEqual(0.32 + 1e-6)
      }
  })

  test('a square wire box has uprights 50 mm apart', () => {
    const front = panel(potGeometry({ ...starter('starter-box'), entrances: [] }), 'front')
    const uprights = [...segmentsOf(front)].filter(({ a, b }) => Math.abs(a[1] - b[1]) < 1e-6)
    const places = [...new Set(uprights.map(({ a }) => a[1].toFixed(4)))].map(Number).sort((p, q) => p - q)
    expect(places.length).toBe(13)
    expect((places[1] ?? 0) - (places[0] ?? 0)).toBeCloseTo(0.05, 4)
  })
})

test('nothing crosses an entrance or an escape gap', () => {
  const pot = starter('starter-standard')
  const wall = panel(potGeometry(pot), 'wall')
  // Front entrance: 300 wide, from 40 to 170 high, at bearing 0; gap: 108 round, centre 244 high, bearing 45.
  for (const { a, b } of segmentsOf(wall)) {
    const [x, y, z] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2, (a[2] + b[2]) / 2]
    const inEntrance = x > 0 && Math.abs(y) < 0.14 && z > 0.045 && z < 0.165
    expect(inEntrance).toBe(false)
    const angle = Math.atan2(y, x) + Math.PI / 4
    expect(Math.hypot(angle * 0.437, z - 0.244)).toBeGreaterThan(0.049)
  }
})

test('a bearing runs clockwise from above: the haul point at 90° lies along -y', () => {
  const { haulPoint } = potGeometry(starter('starter-standard'))
  expect(haulPoint[1]).toBeLessThan(-0.4)
  expect(Math.abs(haulPoint[0])).toBeLessThan(1e-9)
})

test('tubes have the true bars', () => {
  const rings = potGeometry(starter('starter-standard')).tubes
  expect(rings.find((tube) => tube.part === 'base-ring')?.radiusM).toBeCloseTo(0.006, 9)
  expect(rings.find((tube) => tube.part === 'top-ring')?.radiusM).toBeCloseTo(0.005, 9)
  expect(rings.filter((tube) => tube.part === 'strut')).toHaveLength(4)
})

test('folded, it lies flat and its struts keep their length', () => {
  const pot = starter('starter-standard')
  const flat = potGeometry(pot, { fold: 1 })
  expect(flat.bounds.max[2]).toBeLessThan(0.1)
  const strut = (g: PotGeometry) =>
    g.tubes.find((tube) => tube.part === 'strut')?.points ?? new Float32Array()
  const length = (p: Float32Array) =>
    Math.hypot((p[3] ?? 0) - (p[0] ?? 0), (p[4] ?? 0) - (p[1] ?? 0), (p[5] ?? 0) - (p[2] ?? 0))
  expect(length(strut(flat))).toBeCloseTo(length(strut(potGeometry(pot))), 2)
  expect(potGeometry(starter('starter-cone'), { fold: 1 }).bounds.max[2]).toBeGreaterThan(0.39)
})

test('dimension lines carry the sizes of the design', () => {
  const { dimensions } = potGeometry(starter('starter-standard'))
  const value = (field: string) => dimensions.find((line) => line.field === field)?.valueM
  expect(value('body.heightMm')).toBeCloseTo(0.32, 6)
  expect(value('body.baseDiameterMm')).toBeCloseTo(0.9, 6)
  expect(value('entrances.0.widthMm')).toBeCloseTo(0.3, 6)
  expect(value('escapeGaps.0.bottomEdgeMm')).toBeCloseTo(0.19, 6)
})

test('the densest mesh that can be asked for is thinned to the cap', () => {
  const dense: Pot = {
    ...starter('starter-standard'),
    body: { shape: 'dome', baseDiameterMm: 3000, topDiameterMm: 3000, heightMm: 2000, folds: false, feet: 0 },
    netting: { material: 'PE', twineDiameterMm: 0.3, barLengthMm: 5, knotted: false, hangingRatio: 0.2 },
  }
  const { meshes } = potGeometry(dense, { maxSegments: 50_000 })
  const drawn = meshes.reduce((sum, mesh) => sum + mesh.segments.length / 6, 0)
  expect(drawn).toBeGreaterThan(5_000)
  expect(drawn).toBeLessThan(60_000)
  expect(meshes[0]?.thinning).toBeGreaterThan(1)
})

test('any design the schema allows is drawn with finite numbers, within the cap', () => {
  fc.assert(
    fc.property(arbitraryPot, fc.double({ min: 0, max: 1, noNaN: true }), (pot, fold) => {
      const geometry = potGeometry(pot, { fold, maxSegments: 20_000 })
      const arrays = [
        ...geometry.tubes.map((tube) => tube.points),
        ...geometry.meshes.map((mesh) => mesh.segments),
        ...geometry.lathes.map((lathe) => lathe.profile),
      ]
      for (const array of arrays) expect(array.every(Number.isFinite)).toBe(true)
      for (const anchor of Object.values(geometry.anchors)) expect(anchor.every(Number.isFinite)).toBe(true)
      const drawn = Object.values(geometry.lineCounts).reduce((sum, count) => sum + count, 0)
      expect(drawn).toBeLessThan(80_000)
    }),
    { numRuns: 150 },
  )
}, 30_000)
