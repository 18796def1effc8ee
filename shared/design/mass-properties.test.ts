import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { arbitraryPot } from '../../tests/fixtures/arbitrary-pot'
import type { Pot } from '@shared/schema/pot'
import { builtInMaterials, withOwnMaterials } from './materials/built-in'
import { massProperties, submergedWeight } from './mass-properties'
import { starterPots } from './starter-pots'

const rings: Pot = {
  format: 'potwright/pot',
  version: 1,
  id: 'rings',
  name: 'Two rings',
  gearKind: 'pot',
  body: { shape: 'round', baseDiameterMm: 1000, topDiameterMm: 1000, heightMm: 400, folds: false, feet: 0 },
  frame: [
    { role: 'base-ring', material: 'steel-black', barDiameterMm: 10 },
    { role: 'top-ring', material: 'steel-black', barDiameterMm: 10 },
  ],
  netting: { material: 'PE', twineDiameterMm: 2, barLengthMm: 50, knotted: false, hangingRatio: 0.7071 },
}

describe('a pot worked by hand', () => {
  // Two rings of π·1.0 m of 10 mm bar at 0.617 kg/m: 1.938 kg each.
  test('rings weigh their girth by the bar table', () => {
    const { parts } = massProperties(rings, builtInMaterials)
    expect(parts.find((part) => part.part === 'base-ring')?.massKg).toBeCloseTo(Math.PI * 0.617, 4)
  })

  // Netting: 1.257 m2 wall, 0.785 m2 base and top; Rtex 1975, a 0.05: 2·1.975e-3/0.05 = 0.0790 kg/m2.
  test('netting weighs 2 Rtex/a for each square metre', () => {
    const { parts } = massProperties(rings, builtInMaterials)
    const netting = parts.filter((part) => part.part === 'netting')
    const mass = netting.reduce((sum, part) => sum + part.massKg, 0)
    expect(mass).toBeCloseTo(0.079 * (Math.PI * 0.4 + 2 * Math.PI * 0.25), 3)
  })

  // Steel keeps 0.869 of its weight, PE floats a little: 9.81·(3.877 - 1025·3.877/7850) - ....
  test('the submerged weight follows from the densities', () => {
    const mass = massProperties(rings, builtInMaterials)
    const steel = 2 * Math.PI * 0.617
    const steelVolume = 2 * Math.PI * 1.0 * (Math.PI / 4) * 0.01 ** 2
    const net = 0.079 * (Math.PI * 0.4 + 2 * Math.PI * 0.25)
    const byHand = 9.81 * (steel - 1025 * steelVolume + net * (1 - 1025 / 950))
    expect(submergedWeight(mass, 1025, 9.81)).toBeCloseTo(byHand, 1)
  })

  test('two equal rings balance at half the height', () => {
    const mass = massProperties(rings, builtInMaterials)
    expect(mass.centreOfGravity[2]).toBeCloseTo(0.2, 3)
    expect(mass.centreOfBuoyancy[2]).toBeCloseTo(0.2, 3)
  })

  test('zinc adds 0.65 kg for each square metre of bar', () => {
    const galvanised: Pot = {
      ...rings,
      frame: [{ role: 'base-ring', material: 'steel-galvanised', barDiameterMm: 10 }],
    }
    const [ring] = massProperties(galvanised, builtInMaterials).parts
    expect(ring?.massKg).toBeCloseTo(Math.PI * (0.617 + 0.65 * Math.PI * 0.01), 4)
  })
})

test('the scales beat the sum, and keep the densities', () => {
  const plain = massProperties(rings, builtInMaterials)
  const weighed = massProperties({ ...rings, measuredMassKg: 8 }, builtInMaterials)
  expect(weighed.dryMassKg).toBe(8)
  expect(weighed.measured).toBe(true)
  expect(weighed.onBottomMassKg / weighed.volumeM3).toBeCloseTo(plain.onBottomMassKg / plain.volumeM3, 6)
})

test('what is missing is named, not guessed', () => {
  const bare: Pot = { ...rings, frame: [{ role: 'base-ring', material: 'moon-steel', barDiameterMm: 10 }] }
  expect(massProperties(bare, builtInMaterials).missing).toEqual([
    'the density of a material (frame.0.material)',
  ])
  expect(massProperties({ ...rings, frame: [] }, builtInMaterials).missing).toContain('the frame')
})

test("a user's own material counts and is marked", () => {
  const own = withOwnMaterials({
    format: 'potwright/materials',
    version: 1,
    solids: [
      {
        id: 'moon-steel',
        name: 'Moon steel',
        densityKgM3: 5000,
        uses: ['frame'],
        source: 'My own scales',
        confidence: 'user',
      },
    ],
  })
  const pot: Pot = { ...rings, frame: [{ role: 'base-ring', material: 'moon-steel', barDiameterMm: 10 }] }
  const mass = massProperties(pot, own)
  expect(mass.missing).toEqual([])
  expect(mass.parts[0]?.massKg).toBeCloseTo(Math.PI * 5000 * (Math.PI / 4) * 1e-4, 4)
  expect(own.solids.find((solid) => solid.id === 'moon-steel')?.own).toBe(true)
  expect(builtInMaterials.solids.some((solid) => solid.own)).toBe(false)
})

test('a thicker ring is heavier, and no allowed design gives NaN', () => {
  fc.assert(
    fc.property(arbitraryPot, fc.double({ min: 1, max: 50, noNaN: true }), (pot, barDiameterMm) => {
      const mass = massProperties(pot, builtInMaterials)
      const numbers = [
        mass.dryMassKg,
        mass.onBottomMassKg,
        mass.volumeM3,
        mass.carriedKg,
        ...mass.centreOfGravity,
        ...mass.centreOfBuoyancy,
      ]
      expect(numbers.every(Number.isFinite)).toBe(true)
      const ring = (d: number): Pot => ({
        ...rings,
        frame: [{ role: 'base-ring', material: 'steel-black', barDiameterMm: d }],
      })
      expect(massProperties(ring(barDiameterMm * 1.1), builtInMaterials).dryMassKg).toBeGreaterThan(
        massProperties(ring(barDiameterMm), builtInMaterials).dryMassKg,
      )
    }),
    { numRuns: 300 },
  )
})

test('every starting shape can be weighed', () => {
  for (const pot of starterPots) expect(massProperties(pot, builtInMaterials).missing).toEqual([])
})
