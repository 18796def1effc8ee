import fc from 'fast-check'
import { expect, test } from 'vitest'
import { withOverrides } from '@shared/schema/assumption'
import { sunAt, wearAssumptions } from './assumptions'
import { halvings, strengthAfter, sunlitStrength } from './damage'
import { dragMultiplier, foulingFactor, weeksToMultiplier, hydroidLengthMm } from './fouling'
import { barsThatLetOut, barsToMendAt, crabGirth } from './mesh-damage'
import { anodeMassKg, barSectionLeft, yearsToSection, zincLifeYears } from './metal'
import { partLife } from './part-life'
import { damageOf, type PartUse } from './part-use'
import { daysToPart, rotHalfLife, rotRate, rotRateAt } from './release-cord'
import { massLeft, requiredShare } from './rope'
import { probabilityBelow, remainingMonths, strengthAt, updateStrength } from './strength-belief'
import { chanceSaid, monthsSaid } from './wording'

const positive = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('damage adds, so strengths multiply', () => {
  const none = {
    doseKly: 0,
    halfDoseKly: 150,
    hauls: 0,
    halfHauls: 400,
    immersedDays: 0,
    halfImmersedDays: 1800,
  }
  fc.assert(
    fc.property(positive(0, 500), fc.nat(2000), positive(0, 3000), (doseKly, hauls, immersedDays) => {
      const all = strengthAfter(halvings({ ...none, doseKly, hauls, immersedDays }))
      const apart = sunlitStrength(doseKly, 150) * 0.5 ** (hauls / 400) * 0.5 ** (immersedDays / 1800)
      expect(all).toBeCloseTo(apart, 10)
    }),
  )
})

test('an update lies between what was predicted and what was seen, and is surer than both', () => {
  const belief = fc.record({ median: positive(0.05, 1), logSd: positive(0.05, 1) })
  fc.assert(
    fc.property(belief, belief, (predicted, seen) => {
      const after = updateStrength(predicted, seen)
      expect(after.median).toBeGreaterThanOrEqual(Math.min(predicted.median, seen.median) * 0.999999)
      expect(after.median).toBeLessThanOrEqual(Math.max(predicted.median, seen.median) * 1.000001)
      expect(after.logSd).toBeLessThan(Math.min(predicted.logSd, seen.logSd))
      const swapped = updateStrength(seen, predicted)
      expect(swapped.median).toBeCloseTo(after.median, 12)
    }),
  )
  expect(() => updateStrength({ median: 0, logSd: 1 }, { median: 1, logSd: 1 })).toThrow(RangeError)
})

test('a tenth of a belief lies under its tenth part, and months left follow the strength', () => {
  const belief = { median: 0.7, logSd: 0.3 }
  for (const share of [0.1, 0.5, 0.9])
    expect(probabilityBelow(belief, strengthAt(belief, share))).toBeCloseTo(share, 10)
  const left = remainingMonths(belief, 0.35, 0.1)
  expect(left.mid).toBeCloseTo(10, 10)
  expect(left.low).toBeLessThan(left.mid)
  expect(remainingMonths(belief, 0.9, 0.1).mid).toBe(0)
  expect(() => remainingMonths(belief, 0.5, 0)).toThrow(RangeError)
})

test('a bar worn for the years that are said has the section that is said', () => {
  fc.assert(
    fc.property(positive(3, 20), positive(0.03, 0.5), positive(0.2, 0.95), (diameter, perYear, share) => {
      const years = yearsToSection(diameter, perYear, share)
      expect(barSectionLeft(diameter, years * perYear)).toBeCloseTo(share, 10)
    }),
  )
  expect(barSectionLeft(8, 5)).toBe(0)
  expect(() => yearsToSection(0, 0.1, 0.7)).toThrow(RangeError)
})

test('zinc goes sooner the wetter it is kept, where the sea takes more than the air', () => {
  fc.assert(
    fc.property(positive(0, 0.9), (wet) => {
      expect(zincLifeYears(85, 20, 6, wet + 0.1)).toBeLessThan(zincLifeYears(85, 20, 6, wet))
    }),
  )
  expect(() => zincLifeYears(85, 0, 0, 0.5)).toThrow(RangeError)
  const duty = {
    areaM2: 0.6,
    currentDensity: 0.1,
    breakdown: 0.1,
    hours: 1752,
    capacityAhPerKg: 780,
    utilisation: 0.8,
  }
  expect(anodeMassKg({ ...duty, hours: 3504 })).toBeCloseTo(2 * anodeMassKg(duty), 12)
  expect(() => anodeMassKg({ ...duty, utilisation: 0 })).toThrow(RangeError)
})

test('growth matters after a week, more in warm water and on thin twine, up to its cap', () => {
  expect(foulingFactor(6, 'thin-twine')).toBe(1)
  expect(foulingFactor(28, 'thin-twine')).toBeGreaterThan(foulingFactor(28, 'wire'))
  expect(foulingFactor(28, 'wire', 22)).toBeGreaterThan(foulingFactor(28, 'wire', 12))
  expect(foulingFactor(3000, 'thin-twine')).toBe(4)
  // Growth doubles over 10 °C, so half the days are enough.
  expect(foulingFactor(20, 'wire', 22)).toBeCloseTo(foulingFactor(40, 'wire', 12), 12)
  expect(dragMultiplier(hydroidLengthMm(weeksToMultiplier(1.8, 'wire')), 'wire')).toBeCloseTo(1.8, 10)
})

test('a round body has the girth of a circle, and more bars let a larger crab out', () => {
  expect(crabGirth(80, 80)).toBeCloseTo(Math.PI * 80, 8)
  expect(barsThatLetOut(100, 28)).toBe(0)
  expect(barsToMendAt(100, 28)).toBe(1)
  expect(barsToMendAt(252.28, 28)).toBe(2)
  expect(() => barsThatLetOut(0, 28)).toThrow(RangeError)
})

test('a cord halves in its half-life, parts at once under more than it bears, rots faster when warm', () => {
  const rate = rotRate(0.63, 124)
  expect(Math.exp(-rate * rotHalfLife(rate))).toBeCloseTo(0.5, 12)
  expect(daysToPart(30, 300, rate)).toBe(0)
  expect(rotRateAt(rate, 1, 21, 2)).toBeCloseTo(4 * rate, 12)
  expect(() => daysToPart(0, 30, rate)).toThrow(RangeError)
})

test('rope: mass never goes below nothing, and a share to keep needs all its figures', () => {
  expect(massLeft(0.01, 200)).toBe(0)
  expect(() => requiredShare(300, 5, 0, 8000)).toThrow(RangeError)
})

test('fibres differ as their figures do', () => {
  const now = {
    ageMonths: 24,
    hauls: 0,
    immersedDays: 300,
    ashoreDays: { sun: 400, shade: 0, indoors: 0, unstated: 0 },
  }
  const damage = ['PP', 'PA', 'PE', 'PES', 'PE black', undefined].map((material) =>
    damageOf({ material }, now, wearAssumptions),
  )
  const [pp = NaN, pa = NaN, pe = NaN, pes = NaN, black = NaN, unknown = NaN] = damage
  expect(pa).toBeGreaterThan(pp)
  expect(pe).toBeLessThan(pp)
  expect(pes).toBeLessThan(pe)
  expect(black).toBeLessThan(pe)
  expect(unknown).toBe(pp)
  const indoors = { ...now, ashoreDays: { sun: 0, shade: 0, indoors: 400, unstated: 0 } }
  expect(damageOf({ material: 'PP' }, indoors, wearAssumptions)).toBeLessThan(pp)
})

test('a figure the user sets is used, marked as theirs, and its range holds it', () => {
  const sheet = withOverrides(wearAssumptions, { halfHauls: 2000, sunKlyPerYear: NaN, unheardOf: 3 })
  expect(sheet.halfHauls).toMatchObject({ value: 2000, low: 150, high: 2000, standing: 'user' })
  expect(sheet.sunKlyPerYear).toEqual(wearAssumptions.sunKlyPerYear)
  expect(Object.keys(sheet)).toEqual(Object.keys(wearAssumptions))
  expect([sunAt(-16), sunAt(60), sunAt(49)]).toEqual([180, 70, 100])
})

test('every figure lies in its own range and says where it comes from', () => {
  for (const { value, low, high, source, label } of Object.values(wearAssumptions)) {
    expect(low).toBeLessThanOrEqual(value)
    expect(value).toBeLessThanOrEqual(high)
    expect(source.length).toBeGreaterThan(5)
    expect(label.length).toBeGreaterThan(5)
  }
})

test('parts of every kind found bad are replaced; stainless is only looked at', () => {
  const now = {
    ageMonths: 6,
    hauls: 20,
    immersedDays: 20,
    ashoreDays: { sun: 0, shade: 0, indoors: 160, unstated: 0 },
  }
  const context = { sheet: wearAssumptions, aheadMonths: 6 }
  const kinds = [
    'rope',
    'netting',
    'bait-bag',
    'bait-basket',
    'chafe',
    'release-cord',
    'frame',
    'float',
    'tag',
    'ties',
    'door-hook',
  ] as const
  for (const kind of kinds) {
    const part: PartUse = { kind, now, inspections: [{ at: now, grade: 4 }] }
    expect(partLife(part, context)).toMatchObject({ decision: 'replace', inspected: true })
    expect(partLife({ ...part, inspections: [] }, context).inspected).toBe(false)
  }
  expect(partLife({ kind: 'frame', material: 'stainless-316', now, inspections: [] }, context)).toMatchObject(
    { decision: 'watch' },
  )
  expect(
    partLife({ kind: 'netting', material: 'wire-galvanised', diameterMm: 2, now, inspections: [] }, context)
      .strengthLeft,
  ).toBeUndefined()
})

test('chances are said to one figure and lives with their range', () => {
  expect([0.01, 0.06, 0.156, 0.5, 0.99].map(chanceSaid)).toEqual([
    'under 1 in 20',
    'about 1 in 10',
    'about 2 in 10',
    'about 5 in 10',
    'nearly sure',
  ])
  expect(monthsSaid({ low: 0, mid: 8.6, high: 19.4 })).toBe('about 8.6 months, could be none, could be 19')
  expect(monthsSaid({ low: 0, mid: 0, high: 4 })).toBe('likely none, could be 4 months')
})
