import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { plainLine } from '@shared/physics/line/line-samples'
import { criticalCurrents } from './critical-current'
import { plainSlideCurrent, plainTipCurrent } from './plain-current'
import { potDrag } from './pot-drag'
import { bar, lonePot, panel, ropedPot, still } from './pot-samples'
import { standing, type StandingPot } from './standing-pot'

describe('critical currents', () => {
  test('without a rope they are the closed forms', () => {
    const uniform = { ...lonePot, current: { ...still.current, depthM: 12 } }
    const { dragN, momentNm } = potDrag(uniform.bodies, { ...still, waterDensity: 1025 })
    const area = dragN / 512.5
    const { slide, tip } = criticalCurrents(uniform)
    expect(slide.currentMps / plainSlideCurrent(0.4, 60, area, 0, 1025)).toBeCloseTo(1, 3)
    expect(tip.currentMps / plainTipCurrent(60, 0.42, momentNm / 512.5, 0, 1025)).toBeCloseTo(1, 3)
  })
  test('on a slope and with lift they are the balance by hand', () => {
    const [slope, grip, weight] = [0.15, 0.4, 60]
    for (const liftAreaM2 of [0.05, -0.05]) {
      const bodies = [{ ...bar, liftAreaM2 }, panel]
      const uniform = { ...lonePot, bodies, slopeRad: slope, current: { ...still.current, depthM: 12 } }
      const { dragN, momentNm } = potDrag(bodies, { ...still, waterDensity: 1025 })
      const lift = 512.5 * Math.max(0, liftAreaM2)
      const held = weight * (grip * Math.cos(slope) - Math.sin(slope))
      const { slide, tip } = criticalCurrents(uniform)
      expect(slide.currentMps / Math.sqrt(held / (dragN + grip * lift))).toBeCloseTo(1, 3)
      const righting = weight * 0.42 * Math.cos(slope)
      expect(tip.currentMps / Math.sqrt(righting / (momentNm + lift * 0.42))).toBeCloseTo(1, 3)
    }
  })
  test('down a slope steeper than its grip it slides without any current', () => {
    const steep = criticalCurrents({ ...lonePot, slopeRad: Math.atan(0.4) + 0.01 })
    expect(steep.slide).toEqual({ currentMps: 0, beyond: false, converged: true })
    expect(steep.tip.currentMps).toBeGreaterThan(1)
  })
  test('at them the factors are 1, from wherever the search starts', () => {
    for (const start of [0, 0.05, 0.6, 2, 6]) {
      const at = { ...ropedPot, current: { ...ropedPot.current, surfaceCurrentMps: start } }
      const { slide, tip, solves } = criticalCurrents(at)
      const factorAt = (u: number) =>
        standing({ ...ropedPot, current: { ...ropedPot.current, surfaceCurrentMps: u } })
      // The current to 0.1 %, so the load, which grows with its square, to a little over 0.2 %.
      expect(Math.abs(factorAt(slide.currentMps).slideFactor - 1)).toBeLessThan(4e-3)
      expect(Math.abs(factorAt(tip.currentMps).tipFactor - 1)).toBeLessThan(4e-3)
      expect([slide, tip]).toMatchObject([
        { beyond: false, converged: true },
        { beyond: false, converged: true },
      ])
      expect(solves).toBeLessThan(13)
    }
  })
  test('a pot that the rope lifts in still water moves at once; one like a rock never does', () => {
    const light = criticalCurrents({ ...ropedPot, wetWeightN: 0.3 })
    expect(light.slide).toEqual({ currentMps: 0, beyond: false, converged: true })
    const rock = criticalCurrents({ ...lonePot, wetWeightN: 1e6 })
    expect(rock.slide).toEqual({ currentMps: 8, beyond: true, converged: true })
    expect(rock.tip.beyond).toBe(true)
  })
  test('a heavier pot holds in more current, a thicker rope in less', () => {
    fc.assert(
      fc.property(between(20, 200), between(1.05, 2), (weight, times) => {
        const at = (change: Partial<StandingPot>) =>
          criticalCurrents({ ...ropedPot, wetWeightN: weight, ...change })
        const base = at({})
        const heavy = at({ wetWeightN: weight * times })
        expect(heavy.slide.currentMps).toBeGreaterThan(base.slide.currentMps)
        expect(heavy.tip.currentMps).toBeGreaterThan(base.tip.currentMps)
        const line = plainLine({ ...ropedPot.line, ropeDiameterM: 0.008 * times })
        expect(at({ line }).slide.currentMps).toBeLessThan(base.slide.currentMps)
      }),
      { numRuns: 15 },
    )
  })
})
