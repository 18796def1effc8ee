import { describe, expect, test } from 'vitest'
import { builtInMaterials } from './built-in'
import { barMassPerM, cordMassPerM, ropeProperties, twineProperties } from './lookup'

describe('printed tables come back as printed', () => {
  // EN bar tables at 7850 kg/m3.
  test.each([
    [6, 0.222],
    [8, 0.395],
    [10, 0.617],
    [12, 0.888],
    [16, 1.58],
    [20, 2.47],
  ])('%i mm bar weighs %f kg/m', (d, mass) => {
    expect(barMassPerM(builtInMaterials, 'steel-black', d)).toBeCloseTo(mass, 3)
  })

  test('a bar off the table is ρπd²/4', () => {
    expect(barMassPerM(builtInMaterials, 'steel-black', 9)).toBeCloseTo(0.4994, 3)
  })

  test('galvanising adds 2.5-5 % to an 8 or 10 mm bar', () => {
    for (const d of [8, 10]) {
      const bare = barMassPerM(builtInMaterials, 'steel-black', d) ?? 0
      const share = (barMassPerM(builtInMaterials, 'steel-galvanised', d) ?? 0) / bare - 1
      expect(share).toBeGreaterThan(0.025)
      expect(share).toBeLessThan(0.05)
    }
  })

  test('8 mm polypropylene rope: 3.0 kg/100 m, 7.61 kN by the more cautious table', () => {
    const rope = ropeProperties(builtInMaterials, { material: 'PP', diameterMm: 8 })
    expect(rope?.massKgPerM).toBeCloseTo(0.03, 6)
    expect(rope?.breakingN).toBeCloseTo(7610, 3)
  })

  test('between rows it lies between them, beyond them it goes with d²', () => {
    const at = (diameterMm: number) =>
      ropeProperties(builtInMaterials, { material: 'PES', diameterMm })?.massKgPerM ?? 0
    expect(at(9)).toBeGreaterThan(at(8))
    expect(at(9)).toBeLessThan(at(10))
    expect(at(28) / at(14)).toBeCloseTo(4, 6)
    expect(at(2) / at(4)).toBeCloseTo(0.25, 6)
  })

  // Braided PE of 2 mm: Rtex about 2000.
  test('2 mm PE twine is about Rtex 2000', () => {
    const twine = twineProperties(builtInMaterials, { material: 'PE', twineDiameterMm: 2 })
    expect((twine?.massKgPerM ?? 0) * 1e6).toBeCloseTo(1975, 0)
  })
})

test('an unknown material is unknown', () => {
  expect(barMassPerM(builtInMaterials, 'unheard-of', 10)).toBeUndefined()
  expect(cordMassPerM(builtInMaterials, { kind: 'cord-lid' })).toBeUndefined()
})

test('every row says where it comes from', () => {
  const { prices, ...tables } = builtInMaterials
  expect(prices).toEqual([])
  for (const rows of Object.values(tables))
    for (const row of rows) expect(row.source.length).toBeGreaterThan(10)
})
