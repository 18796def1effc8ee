import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { liftGuideline, liftZones } from './guideline'
import { heavingSpeed } from './haul'
import { recommendedLift } from './niosh'
import { haulLoads, type WholeHaul } from './peak'
import { sinking, type SinkingPot } from './sinking'

const haul: WholeHaul = {
  wetWeightN: 60,
  potKg: 8,
  catchKg: 5,
  drainedWaterKg: 3,
  planDragAreaM2: 0.3,
  haulMps: 0.6,
  depthM: 15,
  ropeWetWeightNpm: 0.1,
  ropeDiameterM: 0.008,
  waterDensity: 1025,
  jerk: 1.5,
  breakout: 1,
}

describe('a haul', () => {
  test('usually peaks as the pot leaves the water', () => {
    const loads = haulLoads(haul)
    expect(loads.leavingWaterN).toBeCloseTo(1.5 * 9.81 * 16, 9)
    expect(loads.breakingOutN).toBeCloseTo(61.5, 9)
    const coming = 60 + 0.5 * 1025 * 0.36 * (0.3 + 0.02 * 0.008 * 15) + 1.5 + 30
    expect(loads.comingUpN).toBeCloseTo(coming, 9)
    expect(loads).toMatchObject({ stage: 'leaving the water', peakN: loads.leavingWaterN })
    expect(loads.peakKg).toBeCloseTo(24, 9)
  })
  test('heave of the boat makes coming up the peak', () => {
    const loads = haulLoads({ ...haul, haulMps: 1.2, waves: { heightM: 1, periodS: 4 } })
    expect(loads.stage).toBe('coming up')
    const speed = heavingSpeed(1.2, 1, 4)
    expect(loads.peakN).toBeCloseTo(91.5 + 0.5 * 1025 * speed ** 2 * 0.3024, 6)
  })
  test('suction of the mud may be the peak', () => {
    const loads = haulLoads({ ...haul, breakout: 2, wetWeightN: 200, jerk: 1.1, haulMps: 0.2 })
    expect(loads).toMatchObject({ stage: 'breaking out', peakN: 401.5 })
  })
  test('no wave period is no heave to reckon with', () => {
    expect(() => heavingSpeed(1, 0.5, 0)).toThrow(RangeError)
  })
})

describe('guidelines for a lift', () => {
  test('arms out and hands high or low allow less, and the elbow most', () => {
    for (const lifter of ['men', 'women'] as const)
      for (const zone of liftZones) {
        const close = liftGuideline(lifter, zone, 'close to body')
        expect(liftGuideline(lifter, zone, 'arms extended')).toBeLessThan(close)
        expect(close).toBeLessThanOrEqual(liftGuideline(lifter, 'elbow', 'close to body'))
        expect(liftGuideline('women', zone, 'close to body')).toBeLessThan(
          liftGuideline('men', zone, 'close to body'),
        )
      }
    expect(liftZones.map((zone) => liftGuideline('men', zone, 'arms extended'))).toEqual([5, 10, 15, 10, 5])
    expect(liftZones.map((zone) => liftGuideline('women', zone, 'arms extended'))).toEqual([3, 7, 10, 7, 3])
    expect(liftZones.map((zone) => liftGuideline('women', zone, 'close to body'))).toEqual([7, 13, 16, 13, 7])
    expect(liftZones.map((zone) => liftGuideline('men', zone, 'close to body'))).toEqual([10, 20, 25, 20, 10])
  })

  const best = { reachCm: 25, heightCm: 75, travelCm: 25, twistDeg: 0, frequencyFactor: 1, gripFactor: 1 }
  test('closer or shorter than the best counts as the best', () => {
    expect(recommendedLift({ ...best, reachCm: 10, travelCm: 5 })).toBe(23)
  })
  test.each([
    [{ reachCm: 64 }, 0],
    [{ heightCm: 176 }, 0],
    [{ twistDeg: 136 }, 0],
    [{ reachCm: 63 }, (23 * 25) / 63],
    [{ heightCm: 175 }, 23 * 0.7],
    [{ heightCm: 0 }, 23 * (1 - 0.003 * 75)],
    [{ twistDeg: 135 }, 23 * (1 - 0.0032 * 135)],
    [{ travelCm: 100 }, 23 * 0.865],
    [{ frequencyFactor: 0.5, gripFactor: 0.9 }, 23 * 0.45],
  ])('%j gives %d kg', (change, mass) => {
    expect(recommendedLift({ ...best, ...change })).toBeCloseTo(mass, 9)
  })
})

describe('sinking', () => {
  const pot: SinkingPot = {
    massKg: 8,
    centreOfGravityM: 0.08,
    displacedM3: 0.0015,
    centreOfBuoyancyM: 0.12,
    planDrag: [
      { dragAreaM2: 0.1, heightM: 0.3 },
      { dragAreaM2: 0.05, heightM: 0 },
    ],
    waterDensity: 1025,
  }
  test('a heavy base and an open top bring it down base first', () => {
    const found = sinking(pot)
    const buoyancy = 1025 * 9.81 * 0.0015
    const wet = 8 * 9.81 - buoyancy
    expect(found.landsBaseDown).toBe(true)
    expect(found.speedMps).toBeCloseTo(Math.sqrt((2 * wet) / (1025 * 0.15)), 12)
    expect(found.rightingArmM).toBeCloseTo((buoyancy * 0.04 + wet * (0.2 - 0.08)) / (8 * 9.81), 12)
  })
  test('a closed base with the weight on top turns it over', () => {
    const found = sinking({ ...pot, centreOfGravityM: 0.2, planDrag: [{ dragAreaM2: 0.3, heightM: 0 }] })
    expect(found).toMatchObject({ landsBaseDown: false })
    expect(found.rightingArmM).toBeLessThan(0)
  })
  test('what floats does not land', () => {
    const found = sinking({ ...pot, displacedM3: 0.02 })
    expect(found).toMatchObject({ landsBaseDown: false, speedMps: 0 })
    expect(found.rightingArmM).toBeGreaterThan(0)
    expect(() => sinking({ ...pot, massKg: 0 })).toThrow(RangeError)
  })
  test('without drag areas only the buoyancy turns it', () => {
    expect(sinking({ ...pot, planDrag: [] })).toMatchObject({
      speedMps: 0,
      rightingArmM: expect.closeTo((1025 * 0.0015 * 0.04) / 8, 12),
    })
  })
  test('weight added at the base always helps', () => {
    fc.assert(
      fc.property(between(0, 10), (added) => {
        const mass = pot.massKg + added
        const lower = { ...pot, massKg: mass, centreOfGravityM: (pot.massKg * pot.centreOfGravityM) / mass }
        expect(sinking(lower).landsBaseDown).toBe(true)
      }),
    )
  })
})
