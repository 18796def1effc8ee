import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { plainLine } from '@shared/physics/line/line-samples'
import { aarsnes } from '@shared/physics/netting/aarsnes'
import { screenCoefficient } from '@shared/physics/netting/screen'
import { waveCurrentForce } from '@shared/physics/waves/wave-current-force'
import { ringEdgeArm } from './edge-arm'
import { holdFactors, largestFactor, type Hold } from './factors'
import type { FlowBody } from './flow-body'
import { plainSlideCurrent, plainTipCurrent } from './plain-current'
import { potDrag, type PotFlow } from './pot-drag'
import { bar, lonePot, middle, panel, ropedPot, still } from './pot-samples'
import { ringMassNeeded } from './ring-needed'
import { standing } from './standing-pot'

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
  test('growth multiplies the drag of netting, no further than a solid plate, and of nothing else', () => {
    const clean = aarsnes(0.2, 0).cd
    expect(only({ ...panel, growthDrag: 2 }).dragN).toBeCloseTo(2 * only(panel).dragN, 9)
    expect(only({ ...panel, growthDrag: 2, shadowed: 1 }).dragN).toBeCloseTo(
      500 * 0.2 * 2 * clean * (1 - 0.46 * 2 * clean) ** 2,
      9,
    )
    expect(only({ ...panel, growthDrag: 40 }).dragN).toBeCloseTo(500 * 0.2 * 1.17, 9)
    const leaning = { ...panel, alphaDeg: 30, liftSign: 1 } as const
    expect(only({ ...leaning, growthDrag: 1.5 }).liftN).toBeCloseTo(1.5 * only(leaning).liftN, 9)
    expect(only({ ...bar, growthDrag: 3 }).dragN).toBe(only(bar).dragN)
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
  test('behind netting the motion of the waves is slowed as the current is', () => {
    const waves = { orbitalMps: 0.4, periodS: 6 }
    const left = 1 - 0.46 * aarsnes(0.2, 0).cd
    const behind = only({ ...panel, shadowed: 1, liftAreaM2: 0.03, volumeM3: 0 }, { ...still, waves })
    expect(behind.liftN).toBeCloseTo(500 * 0.03 * (1.4 * left) ** 2, 9)
    expect(behind.dragN).toBeCloseTo(500 * 0.2 * aarsnes(0.2, 0).cd * (1.4 * left) ** 2, 6)
    // However many panels stand before it, half the speed is left.
    expect(only({ ...panel, shadowed: 50 }).dragN).toBeCloseTo(only(panel).dragN / 4, 9)
    expect(only({ ...panel, alphaDeg: 60, shadowed: -1 }).dragN).toBe(only({ ...panel, alphaDeg: 60 }).dragN)
  })
  test('a twine meets current and waves at its own thickness, 2 mm where none is said', () => {
    const flow: PotFlow = { ...still, screenModel: 'kristiansen-faltinsen' }
    const cdAt = (speedMps: number, twineDiameterM: number) =>
      screenCoefficient(
        'kristiansen-faltinsen',
        { solidity: 0.2, speedMps, twineDiameterM, viscosity: middle.viscosity },
        0,
      ).cd
    expect(only(panel, flow).dragN).toBeCloseTo(500 * 0.2 * cdAt(1, 0.002), 9)
    expect(only({ ...panel, twineDiameterM: 0.0005 }, flow).dragN).toBeCloseTo(500 * 0.2 * cdAt(1, 0.0005), 9)
    const waves = { orbitalMps: 0.4, periodS: 6 }
    const inWaves = only({ ...panel, volumeM3: 0, twineDiameterM: 0.0005 }, { ...flow, waves }).dragN
    expect(inWaves).toBeCloseTo(500 * 0.2 * cdAt(1.4, 0.0005) * 1.4 ** 2, 6)
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
    expect(() => plainSlideCurrent(0.4, 50, 0, 0, 1025)).toThrow('without drag area')
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
  test('a tall pot on good grip asks for it against tipping, lift, rope and slope counted', () => {
    fc.assert(
      fc.property(
        between(2, 10),
        between(0, 5),
        between(0, 0.3),
        between(1, 1.5),
        (momentNm, liftN, slopeRad, factor) => {
          const change = {
            dragMomentNm: momentNm,
            liftN,
            slopeRad,
            friction: 2,
            wetWeightN: 10,
            upliftArmM: 0.5,
          }
          const found = needed(change, factor)
          expect(found?.governedBy).toBe('tipping')
          const loads =
            momentNm + (liftN + hold.ropeUpliftN) * 0.5 + hold.ropeHorizontalN * hold.bridleHeightM
          const weight = (factor * loads) / (hold.edgeArmM * Math.cos(slopeRad))
          expect(found?.addedMassKg).toBeCloseTo((weight - 10) / (9.81 * (1 - 1025 / 7850)), 9)
          expect(holdFactors(heavier(change, found?.addedMassKg ?? NaN)).tipFactor).toBeCloseTo(factor, 9)
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
    expect(ringMassNeeded(hold, 1, 1025, 1025, 9.81)).toBeUndefined()
  })
})

describe('a standing pot', () => {
  test('the rope pulls on it in its own current', () => {
    const found = standing(ropedPot)
    expect(found.line).toMatchObject({ state: 'surface', converged: true })
    expect(found.hold.ropeHorizontalN).toBeGreaterThan(found.drag.dragN)
    expect(found.hold.friction).toBe(0.4)
    expect(found.slideFactor).toBeLessThan(standing(lonePot).slideFactor)
    expect(standing(lonePot).line).toBeUndefined()
    expect(standing(lonePot).hold).toMatchObject({ ropeHorizontalN: 0, ropeUpliftN: 0 })
  })
  test('a line without a balance pulls nothing and says why', () => {
    const broken = standing({ ...ropedPot, line: plainLine({ ropeLengthM: 0 }) })
    expect(broken.line).toMatchObject({ state: 'failed' })
    expect(broken.hold.ropeHorizontalN).toBe(0)
  })
  test('an edge that sinks into mud tips sooner', () => {
    expect(standing({ ...ropedPot, bottom: 'mud' }).hold.edgeArmM).toBeCloseTo(0.9 * 0.42, 12)
    expect(standing({ ...ropedPot, bottom: 'mud' }).hold.upliftArmM).toBeCloseTo(0.9 * 0.42, 12)
  })
  test('waves, slope and the screen model reach the forces', () => {
    const base = standing(ropedPot).slideFactor
    expect(standing({ ...ropedPot, waves: { orbitalMps: 0.3, periodS: 6 } }).slideFactor).toBeLessThan(base)
    expect(standing({ ...ropedPot, slopeRad: 0.05 }).slideFactor).toBeLessThan(base)
    expect(standing({ ...ropedPot, screenModel: 'loland' }).drag.dragN).toBeGreaterThan(
      standing(ropedPot).drag.dragN,
    )
  })
})
