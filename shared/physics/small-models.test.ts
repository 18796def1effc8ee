import { describe, expect, test } from 'vitest'
import { frictionFactor, frictionPairs } from './bed/friction-table'
import { slopeHolding } from './bed/slope'
import { bluffDrag } from './bodies/bluff'
import { cylinderDrag, cylinderReynoldsLimit } from './bodies/cylinder'
import { sphereDrag, sphereReynoldsLimit } from './bodies/sphere'
import { elasticCatenary } from './catenary/elastic-catenary'
import { barMass, submergedShare } from './material/bar-mass'
import { rateOfTheDay } from './tide/rate-of-the-day'
import { fiftyNinetyRate, sineRate, twelfthsHeight } from './tide/rules-of-thumb'
import { seaWaterDensityAt } from './water/density'

describe('bodies', () => {
  test('the cylinder curve nearly meets itself at Reynolds number 30', () => {
    expect(cylinderDrag(30 - 1e-9)).toBeCloseTo(cylinderDrag(30), 0)
    expect(cylinderDrag(30)).toBeCloseTo(1.1 + 4 / Math.sqrt(30), 12)
    expect(() => cylinderDrag(0)).toThrow(RangeError)
  })
  test('the sphere tends to 0.4 and to Stokes', () => {
    expect(sphereDrag(sphereReynoldsLimit)).toBeCloseTo(0.41, 2)
    expect(sphereDrag(0.001) * 0.001).toBeCloseTo(24, 1)
    expect(() => sphereDrag(-1)).toThrow(RangeError)
    expect(cylinderReynoldsLimit).toBeGreaterThan(sphereReynoldsLimit)
  })
  test('a dome drags less than a cup', () => {
    expect(bluffDrag('hemisphere-cup-to-flow') / bluffDrag('hemisphere-dome-to-flow')).toBeCloseTo(3.5, 12)
    expect(bluffDrag('square-plate')).toBe(1.17)
  })
})

describe('bed', () => {
  test('concrete grips better than steel on the same soil', () => {
    for (const soil of ['clean gravel', 'clean sand', 'silty sand', 'fine sandy silt'])
      expect(frictionFactor(`mass concrete on ${soil}`)).toBeGreaterThan(frictionFactor(`steel on ${soil}`))
    expect(frictionPairs).toHaveLength(10)
    expect(() => frictionFactor('cheese on toast')).toThrow('cheese')
  })
  test('on a slope as steep as the grip nothing is left', () => {
    expect(slopeHolding(100, Math.tan(0.3), 0.3)).toBeCloseTo(0, 12)
    expect(slopeHolding(100, 0.4, 0)).toBe(40)
  })
})

describe('tide', () => {
  test('the twelfths follow the cosine within 2 % of the range', () => {
    for (let t = 0; t <= 6; t += 1) {
      const cosine = (1 - Math.cos((Math.PI * t) / 6)) / 2
      expect(Math.abs(twelfthsHeight(1, t) - cosine)).toBeLessThan(0.02)
    }
    expect(twelfthsHeight(4.8, 2.5)).toBeCloseTo(1.8, 12)
  })
  test('the 50/90 rule rises and falls alike', () => {
    expect([0, 1, 2, 3, 4, 5, 6].map((t) => fiftyNinetyRate(100, t))).toEqual([0, 50, 90, 100, 90, 50, 0])
    expect(fiftyNinetyRate(100, 1.5)).toBe(70)
  })
  test('the sine turns after half a period', () => {
    expect(sineRate(1, 6.2103)).toBeCloseTo(0, 12)
    expect(sineRate(1, 9.31545)).toBeCloseTo(-1, 9)
  })
  test('a very small tide has no negative stream', () => {
    const [spring, neap] = [
      { rangeM: 5, rate: 2 },
      { rangeM: 3, rate: 0.5 },
    ]
    expect(rateOfTheDay(1, spring, neap)).toBe(0)
    expect(rateOfTheDay(6, spring, neap)).toBeCloseTo(2.75, 12)
    expect(() => rateOfTheDay(4, neap, spring)).toThrow(RangeError)
    expect(() => rateOfTheDay(4, spring, spring)).toThrow(RangeError)
  })
})

describe('sea water', () => {
  test('fresh water is heaviest near 4 degrees, salt adds to it', () => {
    expect(seaWaterDensityAt(0, 4)).toBeCloseTo(999.975, 3)
    expect(seaWaterDensityAt(0, 4)).toBeGreaterThan(seaWaterDensityAt(0, 8))
    expect(seaWaterDensityAt(35, 10)).toBeGreaterThan(seaWaterDensityAt(30, 10))
  })
})

describe('materials', () => {
  test('a hollow or light bar', () => {
    expect(barMass(0.01)).toBeCloseTo(0.6165, 4)
    expect(barMass(0.01, 2700)).toBeCloseTo(0.212, 3)
    expect(submergedShare(1025, 1025)).toBe(0)
    expect(() => submergedShare(0, 1025)).toThrow(RangeError)
  })
})

describe('catenary', () => {
  const line = { spanM: 100, riseM: 30, lengthM: 120, stiffnessN: 1e9, wetWeightNpm: 20, onBed: false }
  test('obeys its own equations, stretch included', () => {
    const { horizontalN: h, verticalTopN: v, groundedM, converged } = elasticCatenary(line)
    expect(converged).toBe(true)
    expect(groundedM).toBe(0)
    const low = v - 20 * 120
    const span = (h / 20) * (Math.asinh(v / h) - Math.asinh(low / h)) + (h * 120) / 1e9
    expect(span).toBeCloseTo(100, 6)
    const soft = elasticCatenary({ ...line, stiffnessN: 5e4 })
    expect(soft.converged).toBe(true)
    const [sh, sv] = [soft.horizontalN, soft.verticalTopN]
    const lower = sv - 20 * 120
    const stretched = (sh / 20) * (Math.asinh(sv / sh) - Math.asinh(lower / sh)) + (sh * 120) / 5e4
    expect(stretched).toBeCloseTo(100, 6)
    const rise =
      (sh / 20) * (Math.hypot(1, sv / sh) - Math.hypot(1, lower / sh)) + (sv * 120 - 10 * 120 ** 2) / 5e4
    expect(rise).toBeCloseTo(30, 6)
  })
  test('laid on the bed it obeys them too', () => {
    const soft = elasticCatenary({ ...line, lengthM: 125, stiffnessN: 5e4, onBed: true })
    const [h, v] = [soft.horizontalN, soft.verticalTopN]
    expect(soft.groundedM + (h / 20) * Math.asinh(v / h) + (h * 125) / 5e4).toBeCloseTo(100, 6)
    expect((h / 20) * (Math.hypot(1, v / h) - 1) + v ** 2 / (2 * 5e4 * 20)).toBeCloseTo(30, 6)
  })
  test('taut enough to lift off the bed it hangs as if there were none', () => {
    const taut = { ...line, lengthM: 105 }
    const laid = elasticCatenary({ ...taut, onBed: true })
    expect(laid.groundedM).toBe(0)
    expect(laid.horizontalN / elasticCatenary(taut).horizontalN).toBeCloseTo(1, 9)
  })
  test('a soft line stretches and pulls less', () => {
    const stiff = elasticCatenary({ ...line, lengthM: 105 })
    const soft = elasticCatenary({ ...line, lengthM: 105, stiffnessN: 1e5 })
    expect(soft.horizontalN).toBeLessThan(stiff.horizontalN)
  })
  test('on a bed that carries it, what lies down is not hanging', () => {
    const laid = elasticCatenary({ ...line, lengthM: 125, onBed: true })
    expect(laid.groundedM).toBeGreaterThan(5)
    expect(laid.verticalTopN).toBeCloseTo(20 * (125 - laid.groundedM), 6)
  })
  test.each(['spanM', 'riseM', 'lengthM', 'stiffnessN', 'wetWeightNpm'] as const)(
    '%s of zero is refused',
    (key) => {
      expect(() => elasticCatenary({ ...line, [key]: 0 })).toThrow(RangeError)
    },
  )
})
