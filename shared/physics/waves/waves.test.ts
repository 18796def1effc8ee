import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { relativeDepth, waveLength, waveNumber } from './dispersion'
import { bedExcursion, bedOrbitalSpeed, unbrokenHeight, waveMotion } from './orbital'
import { waveCurrentForce } from './wave-current-force'

describe('dispersion', () => {
  test('holds for any period and depth', () => {
    fc.assert(
      fc.property(between(1, 25), between(0.1, 400), (period, depth) => {
        const k = waveNumber(period, depth)
        const omega = (2 * Math.PI) / period
        expect(Math.abs((9.81 * k * Math.tanh(k * depth)) / omega ** 2 - 1)).toBeLessThan(1e-10)
      }),
    )
  })
  test('deep and shallow limits', () => {
    expect(waveLength(4, 400)).toBeCloseTo((9.81 * 16) / (2 * Math.PI), 8)
    expect(waveLength(20, 0.1) / (20 * Math.sqrt(0.981))).toBeCloseTo(1, 3)
  })
  test.each([
    [0.15, 0.183302],
    [0.2, 0.225115],
    [0.3, 0.312118],
  ])('d/L0 %d gives d/L %d', (deep, relative) => {
    expect(relativeDepth(deep)).toBeCloseTo(relative, 6)
  })
  test.each([
    [0, 10],
    [8, 0],
    [Infinity, 10],
    [8, Infinity],
  ])('period %d s in %d m is refused', (period, depth) => {
    expect(() => waveNumber(period, depth)).toThrow(RangeError)
  })
})

describe('motion of the water', () => {
  const wave = { heightM: 5.5, periodS: 8 }
  test('the manual example: w 1.11 m/s and a_z -0.50 m/s²', () => {
    const motion = waveMotion(wave, 15, -5, Math.PI / 3)
    expect(motion.verticalMps).toBeCloseTo(1.11, 1)
    expect(motion.verticalMps2).toBeCloseTo(-0.5, 1)
    expect(motion.horizontalMps).toBeCloseTo(0.99, 1)
  })
  test('at the bed there is no upright motion, and the orbital speed is that of the bed', () => {
    const motion = waveMotion(wave, 15, -15, 0)
    expect(motion.verticalMps2).toBeCloseTo(0, 12)
    expect(motion.horizontalMps).toBeCloseTo(bedOrbitalSpeed(wave, 15), 9)
    expect(bedOrbitalSpeed(wave, 15, 2) / bedOrbitalSpeed(wave, 15)).toBeCloseTo(
      Math.cosh(2 * waveNumber(8, 15)),
      9,
    )
    expect(bedExcursion(wave, 15)).toBeCloseTo((bedOrbitalSpeed(wave, 15) * 8) / (2 * Math.PI), 9)
  })
  test('a wave too high for the water breaks', () => {
    expect(unbrokenHeight(wave, 5)).toBeCloseTo(3.9, 12)
    expect(unbrokenHeight(wave, 50)).toBe(5.5)
    // A second apart, in deep water: 0.142 of 1.561 m.
    expect(unbrokenHeight({ heightM: 8, periodS: 1 }, 50)).toBeCloseTo(0.142 * 1.5613, 4)
  })
})

describe('force of current and waves', () => {
  const load = {
    currentMps: 0.5,
    orbitalMps: 0.4,
    periodS: 6,
    dragAreaM2: 0.1,
    inertiaVolumeM3: 0,
    waterDensity: 1025,
  }
  test('without inertia it is the drag under the crest', () => {
    expect(waveCurrentForce(load)).toBeCloseTo(0.5 * 1025 * 0.1 * 0.81, 9)
  })
  test('without drag it is the inertia, a quarter wave away', () => {
    const force = waveCurrentForce({ ...load, dragAreaM2: 0, inertiaVolumeM3: 0.01 })
    expect(force).toBeCloseTo((1025 * 0.01 * 0.4 * 2 * Math.PI) / 6, 6)
  })
  test('in waves alone, drag and inertia meet at the phase between them', () => {
    // D cos²θ + I sin θ is greatest at sin θ = I/2D, where it is D + I²/4D; from I = 2D on it is I.
    const drag = 0.5 * 1025 * 0.1 * 0.4 ** 2
    for (const share of [0.3, 1, 1.9, 2.5]) {
      const inertiaVolumeM3 = (share * drag * 6) / (1025 * 0.4 * 2 * Math.PI)
      const force = waveCurrentForce({ ...load, currentMps: 0, inertiaVolumeM3 })
      expect(force / drag).toBeCloseTo(share < 2 ? 1 + share ** 2 / 4 : share, 9)
    }
  })
  test('is never below any moment of the wave', () => {
    fc.assert(
      fc.property(
        between(0, 2),
        between(0, 2),
        between(0, 0.02),
        between(0, 7),
        (current, orbital, volume, phase) => {
          const most = waveCurrentForce({
            ...load,
            currentMps: current,
            orbitalMps: orbital,
            inertiaVolumeM3: volume,
          })
          const u = current + orbital * Math.cos(phase)
          const now =
            0.5 * 1025 * 0.1 * Math.abs(u) * u - (1025 * volume * orbital * 2 * Math.PI * Math.sin(phase)) / 6
          expect(most).toBeGreaterThanOrEqual(now - 1e-9 * (1 + Math.abs(now)))
        },
      ),
    )
  })
})
