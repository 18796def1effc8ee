import { describe, expect, test } from 'vitest'
import { criticalAngle, dragCatenary, straightLine } from './exact-shapes'
import { ropeNormalDrag, straightRopeDrag, strummingFrequency, towedGearDrag } from './drag'
import { handbookStrength, knotStrength, ropeBreakingStrength, ropeSafeLoad } from './strength'
import { ropeMass, ropeWetWeight } from './weight'

describe('strength', () => {
  test.each([
    ['PP', 12, 16.8],
    ['PE', 8, 6.7],
    ['PA', 10, 20.4],
    ['PES', 6, 5.5],
  ] as const)('%s of %d mm breaks at %d kN', (fibre, diameter, strength) => {
    expect(ropeBreakingStrength(fibre, diameter)).toBeCloseTo(strength, 12)
  })
  test('between printed sizes it runs in d², beyond them with d²', () => {
    expect(ropeBreakingStrength('PP', 7)).toBeCloseTo(5 + ((49 - 36) / (64 - 36)) * 2.61, 12)
    expect(ropeBreakingStrength('PP', 3)).toBeCloseTo(5 / 4, 12)
    expect(ropeBreakingStrength('PP', 24)).toBeCloseTo(16.8 * 4, 12)
  })
  test('the handbook lies above the cautious table for polypropylene', () => {
    for (const d of [6, 8, 10, 12])
      expect(handbookStrength('PP', d)).toBeGreaterThan(ropeBreakingStrength('PP', d))
    expect(handbookStrength('PP', 8)).toBeCloseTo(9.4, 12)
  })
  test('a knot, age and wetness take their share', () => {
    expect(ropeSafeLoad(9.6, 8)).toBeCloseTo(1.2, 12)
    expect(ropeSafeLoad(9.6, 8, { knot: knotStrength.bowline, age: 0.5, wet: 0.9 })).toBeCloseTo(0.351, 12)
    expect(knotStrength['eye splice']).toBeGreaterThan(knotStrength.bowline)
    expect(knotStrength.reef).toBeLessThan(knotStrength['clove hitch'])
  })
  test('impossible sizes are refused', () => {
    expect(() => ropeBreakingStrength('PP', 0)).toThrow(RangeError)
    expect(() => ropeSafeLoad(5, 0)).toThrow(RangeError)
  })
})

describe('weight', () => {
  test.each([
    ['PP', 8, 3],
    ['PP', 14, 9],
    ['PE', 10, 4.7],
    ['PA', 12, 9.4],
    ['PES', 6, 3],
  ] as const)('%s of %d mm weighs %d kg per 100 m to a twentieth', (fibre, diameter, mass) => {
    expect(Math.abs((100 * ropeMass(fibre, diameter)) / mass - 1)).toBeLessThan(0.06)
  })
  test('polypropylene floats, polyester sinks', () => {
    expect(ropeWetWeight(0.03, 910, 1025)).toBeLessThan(0)
    expect(ropeWetWeight(0.05, 1380, 1025)).toBeCloseTo(9.81 * 0.05 * (1 - 1025 / 1380), 12)
    expect(() => ropeWetWeight(0.03, 0, 1025)).toThrow(RangeError)
  })
})

describe('drag', () => {
  test('a straight rope between the tabulated angles', () => {
    expect(straightRopeDrag(45)).toBeCloseTo(0.63, 12)
    for (let a = 0; a <= 90; a += 10)
      expect(Math.abs(straightRopeDrag(a) - (0.12 + 1.18 * Math.sin((a * Math.PI) / 180) ** 2))).toBeLessThan(
        0.13,
      )
  })
  test('a taut rope has the drag of one that hums, a slack one does not', () => {
    expect(ropeNormalDrag(1.2, 1.8, 10, 10)).toBe(1.8)
    expect(ropeNormalDrag(1.2, 1.8, 10.5, 10)).toBe(1.8)
    expect(ropeNormalDrag(1.2, 1.8, 11.75, 10)).toBeCloseTo(1.5, 12)
    expect(ropeNormalDrag(1.2, 1.8, 13, 10)).toBeCloseTo(1.2, 12)
    expect(ropeNormalDrag(1.2, 1.8, 30, 10)).toBeCloseTo(1.2, 12)
    expect(ropeNormalDrag(1.2, 1.8, 30, 0)).toBeCloseTo(1.2, 12)
  })
  test('humming and towed gear', () => {
    expect(() => strummingFrequency(1, 0)).toThrow(RangeError)
    // Twice the speed hums an octave higher, twice the diameter an octave lower.
    expect(strummingFrequency(1, 0.01) / strummingFrequency(0.5, 0.01)).toBeCloseTo(2, 12)
    expect(strummingFrequency(1, 0.02) / strummingFrequency(1, 0.01)).toBeCloseTo(0.5, 12)
    expect(towedGearDrag(100, true) - towedGearDrag(100, false)).toBeCloseTo(40.26, 10)
  })
})

describe('exact shapes', () => {
  test('without drag a straight line stands plumb', () => {
    expect(straightLine(10, 40, 0)).toEqual({ offsetM: 0, dipM: 0, tensionN: 40 })
    expect(straightLine(10, 30, 40)).toMatchObject({
      offsetM: expect.closeTo(8),
      dipM: expect.closeTo(4),
      tensionN: 50,
    })
  })
  test('the drag catenary begins square to the stream and keeps its length', () => {
    const near = dragCatenary(40, 5, 1e-4)
    expect(near.acrossM).toBeCloseTo(1e-4, 12)
    const [a, b] = [dragCatenary(40, 5, 12), dragCatenary(40, 5, 12.001)]
    expect(Math.hypot(b.acrossM - a.acrossM, b.alongM - a.alongM)).toBeCloseTo(0.001, 9)
  })
  test('a weightless rope lies along the stream at the limit, a heavy one hangs down', () => {
    expect(criticalAngle(0, 5)).toBe(0)
    expect(criticalAngle(1e6, 1)).toBeCloseTo(Math.PI / 2, 5)
    const a = criticalAngle(2, 5)
    expect(2 * Math.cos(a)).toBeCloseTo(5 * Math.sin(a) ** 2, 12)
  })
})
