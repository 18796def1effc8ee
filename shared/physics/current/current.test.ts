import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { bottoms } from '@shared/schema/water'
import { bedDragCoefficient, bedRoughness } from './bed-roughness'
import { meanSquareBetween, meanSquareOverPanel } from './mean-square'
import type { CurrentProfile } from './profile'
import { frictionVelocity, logLawSpeed, roughnessWithin, speedAt, speedFromDepthMean } from './speed'

const power: CurrentProfile = { profile: 'power', surfaceCurrentMps: 1, depthM: 20 }
const log: CurrentProfile = { profile: 'log', surfaceCurrentMps: 1, depthM: 20, z0M: 0.003 }
const uniform: CurrentProfile = { profile: 'uniform', surfaceCurrentMps: 1, depthM: 20 }

/** Mean square and its centre by many thin slices. */
function sliced(profile: CurrentProfile, from: number, to: number) {
  const count = 20_000
  let [sum, moment] = [0, 0]
  for (let i = 0; i < count; i += 1) {
    const z = from + ((i + 0.5) * (to - from)) / count
    const square = speedAt(profile, z) ** 2
    sum += square
    moment += square * z
  }
  return { meanSquare: sum / count, centreM: moment / sum }
}

describe('speed at a height', () => {
  test('the surface speed holds at and above the surface, and there is none in the bed', () => {
    for (const profile of [power, log]) {
      expect(speedAt(profile, 20)).toBe(1)
      expect(speedAt(profile, 25)).toBe(1)
      expect(speedAt(profile, 0)).toBe(0)
      expect(speedAt(profile, -1)).toBe(0)
    }
    expect(speedAt(uniform, 0)).toBe(1)
    expect(speedAt(log, 0.002)).toBe(0)
    expect(speedAt({ ...power, depthM: 0 }, 0.3)).toBe(1)
  })
  test('the logarithmic profile is the logarithmic law', () => {
    expect(speedAt(log, 0.3)).toBeCloseTo(logLawSpeed(1, 20, 0.3, 0.003), 12)
    expect(logLawSpeed(1, 20, 0.003, 0.003)).toBe(0)
    expect(() => logLawSpeed(1, 0.001, 0.3, 0.003)).toThrow(RangeError)
    expect(() => logLawSpeed(1, 10, 0.3, 0)).toThrow(RangeError)
  })
  test('roughness is taken as given, by default as of rippled sand, and stays small in shallow water', () => {
    expect(roughnessWithin(log)).toBe(0.003)
    expect(roughnessWithin({ ...power, depthM: 20 })).toBe(0.006)
    expect(roughnessWithin({ ...log, depthM: 0.03 })).toBeCloseTo(0.001, 12)
  })
  test('from the depth mean', () => {
    expect(speedFromDepthMean(1, 20, 10)).toBe(1.07)
    expect(speedFromDepthMean(1, 20, -1)).toBe(0)
    expect(speedFromDepthMean(1, 20, 6.4)).toBeCloseTo(1, 12)
    expect(() => speedFromDepthMean(1, 0, 1)).toThrow(RangeError)
  })
  test('friction velocity is the depth mean over the logarithm of the depth', () => {
    expect(frictionVelocity(2, Math.E ** 6, 1)).toBeCloseTo((0.4 * 2) / 5, 12)
  })
  test('friction velocity refuses water thinner than the roughness', () => {
    expect(() => frictionVelocity(1, 0.005, 0.003)).toThrow(RangeError)
    expect(() => frictionVelocity(1, 10, 0)).toThrow(RangeError)
  })
  test('grows with height', () => {
    fc.assert(
      fc.property(between(0, 25), between(0, 25), (a, b) => {
        for (const profile of [power, log, uniform])
          expect(speedAt(profile, Math.max(a, b))).toBeGreaterThanOrEqual(speedAt(profile, Math.min(a, b)))
      }),
    )
  })
})

describe('mean square over a height', () => {
  test('from the bed it is the closed form, acting at 9/16 of the height', () => {
    const mean = meanSquareBetween(power, 0, 0.3)
    expect(mean.meanSquare).toBeCloseTo(meanSquareOverPanel(1, 20, 0.3), 12)
    expect(mean.centreM).toBeCloseTo((9 / 16) * 0.3, 12)
    expect(() => meanSquareOverPanel(1, 0, 0.3)).toThrow(RangeError)
  })
  test.each([
    [power, 0, 0.5],
    [power, 0.2, 0.5],
    [power, 0.2, 12],
    [uniform, 0.2, 0.5],
  ])('agrees with thin slices: %o from %d to %d', (profile, from, to) => {
    const exact = meanSquareBetween(profile, from, to)
    const thin = sliced(profile, from, to)
    expect(exact.meanSquare).toBeCloseTo(thin.meanSquare, 4)
    expect(exact.centreM).toBeCloseTo(thin.centreM, 4)
  })
  test.each([
    [log, 0.05, 0.5],
    [log, 0, 0.5],
    [{ ...power, depthM: 0.4 }, 0.1, 0.5],
  ])('agrees with thin slices to a hundredth by five points: %o from %d to %d', (profile, from, to) => {
    const points = meanSquareBetween(profile, from, to)
    const thin = sliced(profile, from, to)
    expect(Math.abs(points.meanSquare / thin.meanSquare - 1)).toBeLessThan(0.01)
    expect(Math.abs(points.centreM / thin.centreM - 1)).toBeLessThan(0.01)
  })
  test('a thin bar meets the speed at its height', () => {
    expect(meanSquareBetween(power, 0.3, 0.3)).toEqual({ meanSquare: speedAt(power, 0.3) ** 2, centreM: 0.3 })
  })
  test('in no water at all it is still a number', () => {
    expect(meanSquareBetween({ ...power, depthM: 0 }, 0, 0.3)).toMatchObject({
      meanSquare: expect.closeTo(1, 9),
    })
    expect(meanSquareBetween({ ...power, surfaceCurrentMps: 0, profile: 'log' }, 0, 0.3)).toMatchObject({
      meanSquare: 0,
      centreM: expect.closeTo(0.15, 2),
    })
  })
})

describe('roughness of the bed', () => {
  test('every bottom has one, and reproduces the printed drag coefficients', () => {
    expect(bottoms.every((bottom) => bedRoughness(bottom) > 0)).toBe(true)
    expect(bedDragCoefficient(bedRoughness('silty-sand'))).toBeCloseTo(0.003, 3)
    expect(bedDragCoefficient(bedRoughness('silt'))).toBeCloseTo(0.0016, 4)
    expect(bedDragCoefficient(bedRoughness('rippled-sand'))).toBeCloseTo(0.0061, 4)
  })
  test.each([0, 1, -0.1])('a roughness of %d m is refused', (z0) => {
    expect(() => bedDragCoefficient(z0)).toThrow(RangeError)
  })
})
