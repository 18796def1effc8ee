import { describe, expect, test } from 'vitest'
import { massProperties } from '@shared/design/mass-properties'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import type { Pot } from '@shared/schema/pot'
import type { Conditions } from '@shared/tides/conditions'
import { bestSingleChange, singleChanges } from './best-change'
import { checkPot, type CheckInput } from './check-pot'
import { currentOverRingMass, explain, factorOverCurrent } from './explain'

const channel: Conditions = {
  surfaceCurrentMps: 0.8,
  depthLowM: 8,
  depthHighM: 11,
  bottom: 'sand',
  waves: undefined,
  temperatureC: undefined,
  salinityPsu: undefined,
  basis: 'a current typed in',
}
const standard = starterPots.find((pot) => pot.id === 'starter-standard') as Pot
const input = (pot: Pot = standard, surfaceCurrentMps = 0.8): CheckInput => ({
  pot,
  materials: builtInMaterials,
  coefficients: defaultCoefficients,
  conditions: { ...channel, surfaceCurrentMps },
})

describe('forces', () => {
  const shown = explain(input())
  test('they balance while the pot holds, and grip is all there is when it slides', () => {
    const still = explain(input(standard, 0.3))
    const sum = (e: typeof shown, axis: 0 | 1) =>
      (e?.arrows ?? []).reduce((total, a) => total + a.forceN[axis], 0)
    expect(sum(still, 0)).toBeCloseTo(0, 6)
    expect(sum(still, 1)).toBeCloseTo(0, 6)
    expect(sum(shown, 0)).toBeCloseTo((shown?.pushN ?? 0) - (shown?.gripN ?? 0), 6)
  })
  test('the factors follow from the sums', () => {
    expect((shown?.gripN ?? 0) / (shown?.pushN ?? 1)).toBeCloseTo(shown?.slideFactor ?? 0, 6)
    expect((shown?.rightingNm ?? 0) / (shown?.overturningNm ?? 1)).toBeCloseTo(shown?.tipFactor ?? 0, 6)
  })
  test('the rope runs from the surface down to the bridle', () => {
    const shape = shown?.rope?.shape ?? new Float64Array()
    expect(shape[1]).toBeCloseTo(shown?.depthM ?? 0, 2)
    expect(shape[shape.length - 1]).toBeCloseTo(0.32, 2)
    expect(shown?.rope?.state).toBe('surface')
  })
  test('growth that doubles the drag of netting all but doubles its share, and no other', () => {
    const dragOf = (foulingFactor: number, part: string) =>
      explain({ ...input(), wear: { foulingFactor } })?.shares.find((share) => share.part === part)?.dragN ??
      NaN
    const times = dragOf(2, 'netting') / dragOf(1, 'netting')
    // Behind the front, thicker with growth, the water is slower.
    expect(times).toBeLessThan(2)
    expect(times).toBeGreaterThan(1.85)
    expect(dragOf(2, 'base-ring')).toBe(dragOf(1, 'base-ring'))
  })
  test('nothing is explained where nothing is known', () => {
    expect(explain({ ...input(), conditions: { missing: 'the current' } })).toBeUndefined()
  })
})

describe('curves', () => {
  test('the factor falls with the current, and crosses 1 at the sliding current', () => {
    const curve = factorOverCurrent(input(), 40)
    const figures = checkPot(input()).verdicts.holdsBottom.figures
    const slide = figures?.['slideCurrentMps']
    const mid = typeof slide === 'object' && !Array.isArray(slide) ? slide.mid : NaN
    const crossing = curve.find((point) => point.mid < 1)?.x ?? NaN
    expect(Math.abs(crossing - mid)).toBeLessThan(1.2 / 40 + 0.005)
    for (let i = 1; i < curve.length; i++) expect(curve[i]?.mid).toBeLessThan(curve[i - 1]?.mid ?? 0)
  })
  test('the current rises with the ring', () => {
    const curve = currentOverRingMass(input(), [8, 12, 16, 20])
    expect(curve.map((point) => point.x)).toEqual([...curve.map((point) => point.x)].sort((a, b) => a - b))
    for (let i = 1; i < curve.length; i++) expect(curve[i]?.mid).toBeGreaterThan(curve[i - 1]?.mid ?? 0)
    for (const point of curve) expect(point.low).toBeLessThan(point.high)
  })
})

describe('single changes', () => {
  test('a ring that is said to hold does hold', () => {
    const change = singleChanges(input()).find((c) => c.path === 'frame.0.barDiameterMm')
    expect(change?.enough).toBe(true)
    expect(change?.what).toMatch(/^A base ring of \d+ mm instead of 12 mm bar holds\./)
    expect(checkPot(input(change?.pot)).verdicts.holdsBottom.findings[0]?.state).not.toBe('fails')
    // The next size down does not: the smallest enough is named.
    const frame = (standard.frame ?? []).map((m, i) =>
      i === 0 ? { ...m, barDiameterMm: (change?.to ?? 0) - 2 } : m,
    )
    expect(checkPot(input({ ...standard, frame })).verdicts.holdsBottom.findings[0]?.state).toBe('fails')
  })
  test('enough comes first, then what comes nearest', () => {
    const changes = singleChanges(input()).filter((c) => c.verdict === 'holdsBottom')
    const firstShort = changes.findIndex((c) => !c.enough)
    if (firstShort >= 0) expect(changes.slice(firstShort).every((c) => !c.enough)).toBe(true)
    const short = changes.filter((c) => !c.enough).map((c) => c.factor)
    expect(short).toEqual([...short].sort((a, b) => b - a))
    expect(bestSingleChange(input())).toEqual(changes[0])
  })
  test('a small float gets a larger one, that shows', () => {
    const small: Pot = {
      ...standard,
      float: {
        shape: 'sphere',
        diameterMm: 120,
        massKg: 0.12,
        material: 'PVC',
        colours: ['red'],
        pattern: 'solid',
      },
    }
    const change = singleChanges(input(small)).find((c) => c.path === 'float.diameterMm')
    expect(change?.enough).toBe(true)
    expect(checkPot(input(change?.pot)).verdicts.floatShows.state).not.toBe('fails')
  })
  test('a rope too weak for the haul gets a thicker one', () => {
    const weak = input(
      { ...standard, rope: { material: 'PP', construction: '3-strand', diameterMm: 3, lengthM: 22 } },
      0.2,
    )
    const change = singleChanges(weak).find((c) => c.verdict === 'lifts')
    expect(change?.enough).toBe(true)
    expect(change?.gainN).toBeGreaterThan(0)
  })
  test('a larger float is no help where it lifts the pot: the rope is too short', () => {
    const short: Pot = {
      ...standard,
      rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 10 },
    }
    const deep = { ...input(short, 0.4), conditions: { ...channel, surfaceCurrentMps: 0.4, depthHighM: 12 } }
    const changes = singleChanges(deep).filter((c) => c.verdict === 'floatShows')
    expect(changes.map((c) => c.path)).toEqual(['rope.lengthM'])
    expect(checkPot({ ...deep, pot: changes[0]?.pot ?? short }).verdicts.floatShows.state).not.toBe('fails')
  })
  test('a rope far too short gets one that reaches', () => {
    const short: Pot = {
      ...standard,
      rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 5 },
    }
    const longer = singleChanges(input(short, 0.3)).find((c) => c.verdict === 'floatShows')
    expect(longer).toMatchObject({ path: 'rope.lengthM', enough: true })
    expect(checkPot(input(longer?.pot, 0.3)).verdicts.floatShows.state).not.toBe('fails')
  })
  test('no rope that cuts the hands, no bar that is not sold', () => {
    for (const pot of starterPots)
      for (const mps of [0.4, 0.7, 1, 2])
        for (const change of singleChanges(input(pot, mps))) {
          expect(change.what).not.toMatch(/NaN|takes -/)
          if (change.path === 'rope.diameterMm') expect(change.to).toBeGreaterThanOrEqual(6)
          if (change.path.endsWith('barDiameterMm')) expect(change.to).toBeLessThanOrEqual(25)
        }
  })
  test('what brings less than a quarter of what is wanting is left out', () => {
    // In half a metre a second twice the rope would take a third of a newton off.
    const changes = singleChanges(input(standard, 0.52)).filter((c) => c.verdict === 'holdsBottom')
    expect(changes.map((c) => c.path)).toContain('ballast.1')
    expect(changes.map((c) => c.path)).not.toContain('rope.lengthM')
  })
  test('a weighed pot is offered the same ring as the same pot that was not', () => {
    const { computedMassKg } = massProperties(standard, builtInMaterials)
    const weighed = singleChanges(input({ ...standard, measuredMassKg: computedMassKg }))
    expect(weighed.map((c) => c.what)).toEqual(singleChanges(input()).map((c) => c.what))
    const ring = weighed.find((c) => c.path === 'frame.0.barDiameterMm')
    expect(ring?.pot.measuredMassKg).toBeGreaterThan(computedMassKg)
  })
  test('a ring too heavy for one person says so', () => {
    const heavier = singleChanges(input(standard, 0.85)).find((c) => c.path === 'frame.0.barDiameterMm')
    expect(heavier?.what).toMatch(/ It then takes two people, or a hauler\.$/)
  })
  test('a pot that only turns over on its way down is offered nothing against sliding', () => {
    const topHeavy = { ...standard, ballast: [{ material: 'lead', massKg: 5, heightMm: 300 }] }
    const changes = singleChanges(input(topHeavy, 0.2))
    expect(checkPot(input(topHeavy, 0.2)).verdicts.holdsBottom.state).not.toBe('holds')
    expect(changes.filter((c) => c.verdict === 'holdsBottom')).toEqual([])
  })
  test('nothing to change where all holds', () => {
    expect(singleChanges(input(standard, 0.3))).toEqual([])
  })
})
