import fc from 'fast-check'
import { expect, test } from 'vitest'
import { between } from '@shared/numerics/even-samples'
import { partNames } from '@shared/schema/check'
import { bottoms } from '@shared/schema/water'
import { coefficientSet, defaultCoefficients, outlooks } from './coefficients'
import type { FloatBody } from './float/float-body'
import { criticalCurrents } from './holding/critical-current'
import type { FlowBody } from './holding/flow-body'
import { standing, type StandingPot } from './holding/standing-pot'
import { solveLine, type LineProblem } from './line/line'
import { minimumRope } from './line/minimum-rope'
import { pullUnderCurrent } from './line/pull-under'
import { screenModels } from './netting/screen'

/* Any pot in any water that the file formats allow, the absurd ones too: always a number or a reason. */

const often0 = (arbitrary: fc.Arbitrary<number>) =>
  fc.oneof({ weight: 1, arbitrary: fc.constant(0) }, { weight: 5, arbitrary })

const float: fc.Arbitrary<FloatBody> = fc.record({
  shape: fc.constantFrom('sphere', 'cylinder', 'bullet'),
  diameterM: between(0.02, 1.5),
  lengthM: between(0.02, 2),
  massKg: fc.oneof(between(0, 0.3), between(0, 50)),
  cd: between(0.2, 1.5),
  cdAwash: between(0, 1),
})

const line: fc.Arbitrary<LineProblem> = fc.record({
  profile: fc.constantFrom('power', 'uniform', 'log'),
  z0M: between(5e-5, 0.006),
  surfaceCurrentMps: often0(between(0, 7.2)),
  depthM: often0(fc.oneof(between(0, 30), between(0, 418))),
  ropeLengthM: fc.oneof(between(0.5, 60), between(0.5, 500)),
  ropeDiameterM: between(0.002, 0.04),
  ropeWetWeightNpm: often0(fc.oneof(between(-0.2, 0.5), between(-2, 8))),
  clumps: fc.array(fc.record({ atFromFloatM: between(0, 500), wetWeightN: between(0, 180) }), {
    maxLength: 3,
  }),
  float,
  cdn: between(0.8, 2.5),
  cdt: between(0, 0.2),
  waterDensity: between(990, 1035),
  potHeightM: between(0, 2),
})

const body: fc.Arbitrary<FlowBody> = fc.record({
  part: fc.constantFrom(...partNames),
  kind: fc.constantFrom('netting', 'bar', 'bluff'),
  areaM2: often0(between(0, 9)),
  solidity: between(0, 1),
  alphaDeg: between(0, 90),
  liftSign: fc.constantFrom(1, -1),
  twineDiameterM: between(0.0003, 0.008),
  shadowed: fc.integer({ min: 0, max: 4 }),
  centreHeightM: between(0, 2),
  topHeightM: between(0, 2),
  volumeM3: between(0, 0.1),
})

const pot: fc.Arbitrary<StandingPot> = fc.record({
  bodies: fc.array(body, { maxLength: 5 }),
  wetWeightN: between(-100, 2000),
  edgeArmM: often0(between(0, 1.5)),
  upliftArmM: between(0, 1.5),
  bridleHeightM: between(0, 2),
  bottom: fc.constantFrom(...bottoms),
  current: line,
  waterDensity: between(990, 1035),
  coefficients: fc.constantFrom(...outlooks).map((outlook) => coefficientSet(defaultCoefficients, outlook)),
  screenModel: fc.constantFrom(...screenModels),
  waves: fc.record({ orbitalMps: between(0, 4), periodS: between(1, 25) }),
  line,
})

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value]
  if (typeof value !== 'object' || value === null) return []
  return Object.values(value).flatMap(numbersIn)
}

const expectNumbers = (value: unknown) => {
  expect(numbersIn(value).filter((x) => !Number.isFinite(x))).toEqual([])
}

test('20,000 random pots: every force and factor is a number', { timeout: 60_000 }, () => {
  let solved = 0
  fc.assert(
    fc.property(pot, (any) => {
      const { line: rope, slideFactor, tipFactor, hold, drag } = standing(any)
      expectNumbers({ slideFactor, tipFactor, hold, drag: { ...drag, byPart: [] } })
      if (!rope) return
      if (rope.state === 'failed') {
        expect(rope.reason).not.toBe('')
        expect(Number.isFinite(rope.residual)).toBe(true)
        return
      }
      solved += 1
      const { shape, loads, ...rest } = rope
      expectNumbers(rest)
      expectNumbers(loads)
      expect(shape.every(Number.isFinite)).toBe(true)
      expect(rope.iterations).toBeLessThan(250)
      expect(rope.residual).toBeLessThanOrEqual(1e-5)
      expect(rope.dipM).toBeLessThanOrEqual(any.current.depthM)
    }),
    { numRuns: 20_000 },
  )
  expect(solved).toBeGreaterThan(7000)
})

test('lines without a balance are rare', { timeout: 60_000 }, () => {
  let [asked, lost] = [0, 0]
  fc.assert(
    fc.property(line, (any) => {
      const found = solveLine(any)
      asked += 1
      if (found.state === 'failed' && found.reason.startsWith('No balance')) lost += 1
    }),
    { numRuns: 4000 },
  )
  expect(lost / asked).toBeLessThan(0.002)
})

test('limits of current and of rope are numbers or nothing', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(pot, (any) => {
      expectNumbers(criticalCurrents(any))
      expectNumbers(pullUnderCurrent(any.line ?? (any.current as LineProblem)))
      const rope = minimumRope(any.line ?? (any.current as LineProblem), 0.5)
      expect(rope === undefined || (rope > 0 && rope <= 1000)).toBe(true)
    }),
    { numRuns: 1500 },
  )
})
