import { describe, expect, test } from 'vitest'
import {
  coefficientKeys,
  coefficientSet,
  coefficientsWith,
  defaultCoefficients,
  edgeArmLeft,
  frictionOn,
  outlooks,
} from './coefficients'
import { bottoms } from '@shared/schema/water'

describe('coefficients', () => {
  test.each(coefficientKeys)('%s: low, mid and high in order and in range, with label and source', (key) => {
    const { low, mid, high, range, label, source } = defaultCoefficients[key]
    expect(low).toBeLessThanOrEqual(mid)
    expect(mid).toBeLessThanOrEqual(high)
    expect(low).toBeGreaterThanOrEqual(range[0])
    expect(high).toBeLessThanOrEqual(range[1])
    expect(label.length).toBeGreaterThan(5)
    expect(source.length).toBeGreaterThan(5)
  })

  test('cautious takes little grip and much drag, hopeful the other ends', () => {
    const [cautious, middle, hopeful] = outlooks.map((o) => coefficientSet(defaultCoefficients, o))
    expect([cautious, middle, hopeful].map((set) => set?.frictionSand)).toEqual([0.3, 0.4, 0.7])
    expect([cautious, middle, hopeful].map((set) => set?.ropeCdn)).toEqual([1.4, 1.2, 1.1])
  })

  test("a user's values replace the defaults, held in range and in order", () => {
    const sheet = coefficientsWith({ frictionMud: { mid: 9, low: 0.2 }, barCd: { mid: 1.05 } })
    expect(sheet.frictionMud).toMatchObject({ low: 0.2, mid: 1.5, high: 1.5 })
    expect(sheet.barCd).toMatchObject({ low: 1.05, mid: 1.05, high: 1.3 })
    expect(sheet.ropeCdt).toEqual(defaultCoefficients.ropeCdt)
    expect(coefficientsWith({ frictionMud: { low: -1 } }).frictionMud.low).toBe(0.05)
  })

  test('grip on each bottom', () => {
    const middle = coefficientSet(defaultCoefficients, 'middle')
    expect(bottoms.map((bottom) => frictionOn(bottom, middle))).toEqual([
      0.3, 0.3, 0.35, 0.4, 0.4, 0.45, 0.35,
    ])
    expect(bottoms.map((bottom) => edgeArmLeft(bottom, middle))).toEqual([0.9, 0.9, 1, 1, 1, 1, 1])
  })
})
