import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { coefficientSet, defaultCoefficients } from '@shared/physics/coefficients'
import { plainLine } from '@shared/physics/line/line-samples'
import { aarsnes } from '@shared/physics/netting/aarsnes'
import { waveCurrentForce } from '@shared/physics/waves/wave-current-force'
import { criticalCurrents } from './critical-current'
import { ringEdgeArm } from './edge-arm'
import { holdFactors, largestFactor, type Hold } from './factors'
import type { FlowBody } from './flow-body'
import { plainSlideCurrent, plainTipCurrent } from './plain-current'
import { potDrag, type PotFlow } from './pot-drag'
import { ringMassNeeded } from './ring-needed'
import { standing, type StandingPot } from './standing-pot'

const middle = coefficientSet(defaultCoefficients, 'middle')
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

const still: PotFlow = {
  current: { profile: 'uniform', surfaceCurrentMps: 1, depthM: 20 },
  waterDensity: 1000,
  coefficients: middle,
}
const panel: FlowBody = {
  part: 'netting',
  kind: 'netting',
  areaM2: 0.2,
  solidity: 0.2,
  shadowed: 0,
  centreHeightM: 0.15,
  topHeightM: 0.3,
  volumeM3: 0.0004,
}
const bar: FlowBody = {
  ...panel,
  part: 'base-ring',
  kind: 'bar',
  areaM2: 0.02,
  centreHeightM: 0.01,
  topHeightM: 0.02,
}
const only = (body: FlowBody, flow = still) => potDrag([body], flow)

describe('drag of a pot', () => {
  test('a bar, a bait and a catch each with their own coefficient', () => {
    expect(only(bar).dragN).toBeCloseTo(500 * 1.2 * 0.02, 9)
    expect(only({ ...bar, cd: 0.9 }).dragN).toBeCloseTo(500 * 0.9 * 0.02, 9)
    expect(only({ ...bar, kind: 'bluff', part: 'bait' }).dragN).toBeCloseTo(500 * 1 * 0.02, 9)
    expect(only({ ...bar, kind: 'bluff', part: 'catch' }).dragN).toBeCloseTo(500 * 0.8 * 0.02, 9)
  })
  test('netting face-on, along the flow, and behind another panel', () => {
    expect(only(panel).dragN).toBeCloseTo(500 * 0.2 * aarsnes(0.2, 0).cd, 9)
    expect(only({ ...panel, alphaDeg: 90 }).dragN).toBeCloseTo(500 * 0.2 * 0.04, 9)
    const left = 1 - 0.46 * aarsnes(0.2, 0).cd
    expect(only({ ...panel, shadowed: 1 }).dragN).toBeCloseTo(only(panel).dragN * left ** 2, 9)
    expect(only({ ...panel, shadowed: 2, alphaDeg: 60 }).dragN).toBeCloseTo(
      500 * 0.2 * aarsnes(0.2, Math.PI / 3).cd * left ** 4,
      9,
    )
    const { solidity, ...bare } = panel
    expect(solidity).toBe(0.2)
    expect(only(bare).dragN).toBeCloseTo(0, 9)
  })
  test('a sloping panel lifts or presses as it is turned, and a closed top lifts', () => {
    const lift = 500 * 0.2 * aarsnes(0.2, Math.PI / 6).cl
    expect(only({ ...panel, alphaDeg: 30 }).liftN).toBe(0)
    expect(only({ ...panel, alphaDeg: 30, liftSign: 1 }).liftN).toBeCloseTo(lift, 9)
    expect(only({ ...panel, alphaDeg: 30, liftSign: -1 }).liftN).toBeCloseTo(-lift, 9)
    expect(only({ ...bar, liftAreaM2: 0.03 }).liftN).toBeCloseTo(15, 9)
    expect(only({ ...panel, liftAreaM2: 0.03 }).liftN).toBeCloseTo(15, 9)
  })
  test('the current near the bed, the height it acts at, and the factor on it', () => {
    const sheared: PotFlow = { ...still, current: { ...still.current, profile: 'power' } }
    const drag = only(panel, sheared)
    expect(drag.dragN / only(panel).dragN).toBeCloseTo((7 / 9) * (0.3 / 20) ** (2 / 7), 9)
    expect(drag.momentNm / drag.dragN).toBeCloseTo((9 / 16) * 0.3, 9)
    const hung = only({ ...panel, centreHeightM: 0.25 }, sheared)
    expect(hung.momentNm / hung.dragN).toBeGreaterThan(0.24)
    const faster = { ...still, coefficients: { ...middle, nearBedSpeed: 1.1 } }
    expect(only(bar, faster).dragN / only(bar).dragN).toBeCloseTo(1.21, 9)
  })
  test('by part it adds up, and a part met twice is one', () => {
    const pot = potDrag([panel, { ...panel, shadowed: 1 }, bar, { ...bar, liftAreaM2: 0.01 }], still)
    expect(pot.byPart.map((each) => each.part)).toEqual(['netting', 'base-ring'])
    expect(pot.byPart.reduce((sum, each) => sum + each.dragN, 0)).toBeCloseTo(pot.dragN, 9)
    expect(pot.byPart.reduce((sum, each) => sum + each.momentNm, 0)).toBeCloseTo(pot.momentNm, 9)
    expect(pot.byPart[1]).toMatchObject({ dragN: expect.closeTo(24, 9), liftN: expect.closeTo(5, 9) })
    expect(potDrag([], still)).toEqual({ dragN: 0, momentNm: 0, liftN: 0, byPart: [] })
  })
  test('the chosen screen model is used', () => {
    const loland = only(panel, { ...still, screenModel: 'loland' }).dragN
    expect(loland / only(panel).dragN).toBeCloseTo(0.28856 / 0.26, 6)
  })
  test('waves add to the current, with the inertia of the solid volume', () => {
    const waves = { orbitalMps: 0.4, periodS: 6 }
    expect(only(bar, { ...still, waves }).dragN).toBeCloseTo(
      waveCurrentForce({
        currentMps: 1,
        orbitalMps: 0.4,
        periodS: 6,
        dragAreaM2: 0.024,
        inertiaVolumeM3: 0.0008,
        waterDensity: 1000,
      }),
      9,
    )
    expect(only({ ...bar, liftAreaM2: 0.01 }, { ...still, waves }).liftN).toBeCloseTo(5 * 1.96, 9)
  })
  test('grows with the square of the current', () => {
    fc.assert(
      fc.property(between(0.05, 3), between(1.1, 2), (u, times) => {
        const at = (mps: number) =>
          potDrag([panel, bar], { ...still, current: { ...still.current, surfaceCurrentMps: mps } }).dragN
        expect(at(u * times) / at(u)).toBeCloseTo(times ** 2, 9)
      }),
    )
  })
})

const hold: Hold = {
  wetWeightN: 50,
  dragN: 10,
  dragMomentNm: 1.5,
  liftN: 0,
  ropeHorizontalN: 5,
  ropeUpliftN: 4,
  friction: 0.4,
  edgeArmM: 0.4,
  upliftArmM: 0.4,
  bridleHeightM: 0.3,
}

describe('factors', () => {
  test('sliding and tipping by hand', () => {
    const { slideFactor, tipFactor } = holdFactors({ ...hold, liftN: 2 })
    expect(slideFactor).toBeCloseTo((0.4 * 44) / 15, 12)
    expect(tipFactor).toBeCloseTo((50 * 0.4) / (1.5 + 6 * 0.4 + 5 * 0.3), 12)
  })
  test('rope or water pressing down are not counted on', () => {
    expect(holdFactors({ ...hold, liftN: -9, ropeUpliftN: -9 })).toEqual(
      holdFactors({ ...hold, liftN: 0, ropeUpliftN: 0 }),
    )
  })
  test('no weight left is 0, no push is the largest that is told apart', () => {
    expect(holdFactors({ ...hold, ropeUpliftN: 50 }).slideFactor).toBe(0)
    expect(holdFactors({ ...hold, wetWeightN: -1 })).toEqual({ slideFactor: 0, tipFactor: 0 })
    const calm = holdFactors({ ...hold, dragN: 0, dragMomentNm: 0, ropeHorizontalN: 0, ropeUpliftN: 0 })
    expect(calm).toEqual({ slideFactor: largestFactor, tipFactor: largestFactor })
  })
  test('down a slope it holds less', () => {
    const slope = holdFactors({ ...hold, slopeRad: 0.1 })
    const grip = 0.4 * (50 * Math.cos(0.1) - 4)
    expect(slope.slideFactor).toBeCloseTo(grip / (15 + 50 * Math.sin(0.1)), 12)
    expect(slope.tipFactor).toBeCloseTo(holdFactors(hold).tipFactor * Math.cos(0.1), 12)
  })
})

describe('arms and plain currents', () => {
  test('a ring stands on its whole radius, feet on less, two feet not at all', () => {
    expect([ringEdgeArm(0.4, 0), ringEdgeArm(0.4, 1), ringEdgeArm(0.4, 2)]).toEqual([0.4, 0, 0])
    expect(ringEdgeArm(0.4, 3)).toBeCloseTo(0.2, 12)
    expect(ringEdgeArm(0.4, 12)).toBeGreaterThan(ringEdgeArm(0.4, 6))
  })
  test('without anything to push on there is no critical current', () => {
    expect(() => plainSlideCurrent(0.4, 50, 0, 0, 1025)).toThrow(RangeError)
    expect(() => plainTipCurrent(50, 0.3, 0, 0, 1025)).toThrow(RangeError)
  })
})

describe('ring needed', () => {
  const needed = (change: Partial<Hold>, factor = 1) =>
    ringMassNeeded({ ...hold, ...change }, factor, 7850, 1025, 9.81)
  const heavier = (change: Partial<Hold>, mass: number): Hold => ({
    ...hold,
    ...change,
    wetWeightN: (change.wetWeightN ?? hold.wetWeightN) + mass * 9.81 * (1 - 1025 / 7850),
  })
  test('with it the pot just holds, whichever governs', () => {
    fc.assert(
      fc.property(
        between(5, 60),
        between(0.1, 0.6),
        between(0, 0.1),
        between(1, 1.5),
        (dragN, friction, slopeRad, factor) => {
          const change = { dragN, friction, slopeRad, dragMomentNm: 0.5 * dragN, wetWeightN: 10 }
          const found = needed(change, factor)
          if (!found) {
            expect(friction).toBeLessThan(factor * Math.tan(slopeRad) + 1e-9)
            return
          }
          const { slideFactor, tipFactor } = holdFactors(heavier(change, found.addedMassKg))
          expect(Math.min(slideFactor, tipFactor)).toBeCloseTo(factor, 9)
          expect(slideFactor <= tipFactor + 1e-9 ? 'sliding' : 'tipping').toBe(found.governedBy)
        },
      ),
    )
  })
  test('is nothing where the pot holds', () => {
    expect(needed({ wetWeightN: 500 })).toEqual({ addedMassKg: 0, governedBy: 'nothing' })
  })
  test('no mass helps without grip, without an arm, or of a metal that floats', () => {
    expect(needed({ friction: 0 })).toBeUndefined()
    expect(needed({ edgeArmM: 0 })).toBeUndefined()
    expect(ringMassNeeded(hold, 1, 900, 1025, 9.81)).toBeUndefined()
  })
})

const pot: StandingPot = {
  bodies: [panel, { ...panel, shadowed: 1 }, bar],
  wetWeightN: 60,
  edgeArmM: 0.42,
  upliftArmM: 0.42,
  bridleHeightM: 0.3,
  bottom: 'sand',
  current: { profile: 'power', surfaceCurrentMps: 0.6, depthM: 12 },
  waterDensity: 1025,
  coefficients: middle,
  line: plainLine({
    depthM: 12,
    ropeLengthM: 18,
    potHeightM: 0.3,
    ropeWetWeightNpm: -0.04,
    float: { shape: 'sphere', diameterM: 0.25, massKg: 0.6, cd: 0.5, cdAwash: 0.2 },
  }),
}
const alone = ({ line, ...rest }: StandingPot): StandingPot => {
  expect(line).toBeDefined()
  return rest
}

describe('a standing pot', () => {
  test('the rope pulls on it in its own current', () => {
    const found = standing(pot)
    expect(found.line).toMatchObject({ state: 'surface', converged: true })
    expect(found.hold.ropeHorizontalN).toBeGreaterThan(found.drag.dragN)
    expect(found.hold.friction).toBe(0.4)
    expect(found.slideFactor).toBeLessThan(standing(alone(pot)).slideFactor)
    expect(standing(alone(pot)).line).toBeUndefined()
    expect(standing(alone(pot)).hold).toMatchObject({ ropeHorizontalN: 0, ropeUpliftN: 0 })
  })
  test('a line without a balance pulls nothing and says why', () => {
    const broken = standing({ ...pot, line: plainLine({ ropeLengthM: 0 }) })
    expect(broken.line).toMatchObject({ state: 'failed' })
    expect(broken.hold.ropeHorizontalN).toBe(0)
  })
  test('an edge that sinks into mud tips sooner', () => {
    expect(standing({ ...pot, bottom: 'mud' }).hold.edgeArmM).toBeCloseTo(0.9 * 0.42, 12)
    expect(standing({ ...pot, bottom: 'mud' }).hold.upliftArmM).toBeCloseTo(0.9 * 0.42, 12)
  })
  test('waves, slope and the screen model reach the forces', () => {
    const base = standing(pot).slideFactor
    expect(standing({ ...pot, waves: { orbitalMps: 0.3, periodS: 6 } }).slideFactor).toBeLessThan(base)
    expect(standing({ ...pot, slopeRad: 0.05 }).slideFactor).toBeLessThan(base)
    expect(standing({ ...pot, screenModel: 'loland' }).drag.dragN).toBeGreaterThan(standing(pot).drag.dragN)
  })
})

describe('critical currents', () => {
  test('without a rope they are the closed forms', () => {
    const uniform = { ...alone(pot), current: { ...still.current, depthM: 12 } }
    const { dragN, momentNm } = potDrag(uniform.bodies, { ...still, waterDensity: 1025 })
    const area = dragN / 512.5
    const { slide, tip } = criticalCurrents(uniform)
    expect(slide.currentMps / plainSlideCurrent(0.4, 60, area, 0, 1025)).toBeCloseTo(1, 3)
    expect(tip.currentMps / plainTipCurrent(60, 0.42, momentNm / 512.5, 0, 1025)).toBeCloseTo(1, 3)
  })
  test('at them the factors are 1, from wherever the search starts', () => {
    for (const start of [0, 0.05, 0.6, 2, 6]) {
      const at = { ...pot, current: { ...pot.current, surfaceCurrentMps: start } }
      const { slide, tip, solves } = criticalCurrents(at)
      const factorAt = (u: number) => standing({ ...pot, current: { ...pot.current, surfaceCurrentMps: u } })
      expect(factorAt(slide.currentMps).slideFactor).toBeCloseTo(1, 1)
      expect(factorAt(tip.currentMps).tipFactor).toBeCloseTo(1, 1)
      expect([slide, tip]).toMatchObject([
        { beyond: false, converged: true },
        { beyond: false, converged: true },
      ])
      expect(solves).toBeLessThan(30)
    }
  })
  test('a pot that the rope lifts in still water moves at once; one like a rock never does', () => {
    const light = criticalCurrents({ ...pot, wetWeightN: 0.3 })
    expect(light.slide).toEqual({ currentMps: 0, beyond: false, converged: true })
    const rock = criticalCurrents({ ...alone(pot), wetWeightN: 1e6 })
    expect(rock.slide).toEqual({ currentMps: 8, beyond: true, converged: true })
    expect(rock.tip.beyond).toBe(true)
  })
  test('a heavier pot holds in more current, a thicker rope in less', () => {
    fc.assert(
      fc.property(between(20, 200), between(1.05, 2), (weight, times) => {
        const at = (change: Partial<StandingPot>) =>
          criticalCurrents({ ...pot, wetWeightN: weight, ...change })
        const base = at({})
        const heavy = at({ wetWeightN: weight * times })
        expect(heavy.slide.currentMps).toBeGreaterThan(base.slide.currentMps)
        expect(heavy.tip.currentMps).toBeGreaterThan(base.tip.currentMps)
        const line = plainLine({ ...pot.line, ropeDiameterM: 0.008 * times })
        expect(at({ line }).slide.currentMps).toBeLessThan(base.slide.currentMps)
      }),
      { numRuns: 15 },
    )
  })
})
