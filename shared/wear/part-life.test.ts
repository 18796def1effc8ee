import { expect, test } from 'vitest'
import { usualBelief } from './age-life'
import { wearAssumptions } from './assumptions'
import { scaleRange, learn, predictedSurvival, priorBelief } from './own-record'
import { partLife } from './part-life'
import type { Exposure, PartUse } from './part-use'
import { retireDiameterLossPct } from './rope'
import { believedStrength } from './strength-life'
import { usualLife } from './usual-life'

const context = { sheet: wearAssumptions, aheadMonths: 6 }
const ashore = (unstated: number) => ({ sun: 0, shade: 0, indoors: 0, unstated })
const exposure = (ageMonths: number, hauls: number, immersedDays: number): Exposure => ({
  ...{ ageMonths, hauls, immersedDays },
  ashoreDays: ashore(ageMonths * 30.4375 - immersedDays),
})
const rope = (now: Exposure, inspections: PartUse['inspections'] = []): PartUse => ({
  kind: 'rope',
  material: 'PP',
  now,
  inspections,
})
/** Two years, 120 hauls, 60 days down, with a year's sun of 160 kLy over a quarter of the time. */
const sunny = { ...wearAssumptions, sunKlyPerYear: { ...wearAssumptions.sunKlyPerYear, value: 160 } }
const worked: Exposure = { ageMonths: 24, hauls: 120, immersedDays: 60, ashoreDays: ashore(2 * 365.25) }

test('the worked rope: 0.55 from use, 0.62 after a grade 2, about 9 months left', () => {
  expect(believedStrength(rope(worked), sunny).median).toBeCloseTo(0.548, 3)
  const inspected = partLife(rope(worked, [{ at: worked, grade: 2 }]), { sheet: sunny, aheadMonths: 6 })
  expect(inspected.strengthLeft?.mid).toBeCloseTo(0.62, 2)
  expect(inspected.strengthLeft?.low).toBeCloseTo(0.47, 2)
  expect(inspected.strengthLeft?.high).toBeCloseTo(0.81, 2)
  expect(inspected.remainingMonths?.mid).toBeCloseTo(8.6, 1)
  expect(inspected.remainingMonths?.low).toBe(0)
  expect(inspected.remainingMonths?.high).toBeCloseTo(19.4, 1)
  expect(inspected.decision).toBe('watch')
})

test('a rope is judged worse the more it has been through, and by what was seen', () => {
  const decisions = [rope(exposure(2, 5, 2)), rope(exposure(60, 600, 300))].map(
    (part) => partLife(part, context).decision,
  )
  expect(decisions).toEqual(['fine', 'replace'])
  const now = exposure(6, 20, 20)
  expect(partLife(rope(now, [{ at: now, grade: 4 }]), context).decision).toBe('replace')
  expect(partLife(rope(now, [{ at: now, grade: 1, diameterLossPct: 6 }]), context)).toMatchObject({
    decision: 'replace',
    reason: 'The rope has lost 6 % of its diameter; 5 % is the most.',
  })
})

test('one haul on the first day condemns nothing: use is spread over a month at least', () => {
  const firstHour = exposure(0.001, 1, 0.03)
  for (const kind of ['bait-bag', 'rope', 'netting', 'release-cord', 'frame', 'float'] as const)
    expect(partLife({ kind, now: firstHour, inspections: [] }, context).decision).not.toBe('replace')
  // One fill a month of 60 lasts years.
  const bag = partLife({ kind: 'bait-bag', now: firstHour, inspections: [] }, context)
  expect(bag.remainingMonths?.mid).toBeGreaterThan(36)
})

test('use after an inspection weakens what was found and makes it less sure', () => {
  const then = exposure(12, 60, 60)
  const atOnce = believedStrength(rope(then, [{ at: then, grade: 1 }]), wearAssumptions)
  const later = believedStrength(rope(exposure(24, 160, 120), [{ at: then, grade: 1 }]), wearAssumptions)
  expect(later.median).toBeLessThan(atOnce.median)
  expect(later.logSd).toBeGreaterThan(atOnce.logSd)
})

test('netting is judged by broken bars in a row', () => {
  const now = exposure(6, 20, 20)
  const netting = (brokenBars: number): PartUse => ({
    kind: 'netting',
    material: 'PE',
    now,
    inspections: [{ at: now, grade: 0, brokenBars }],
  })
  expect([0, 1, 2].map((broken) => partLife(netting(broken), context).decision)).toEqual([
    'fine',
    'watch',
    'replace',
  ])
})

test('a release cord goes by days in the water and warmth, or by the season', () => {
  const cord = (ageMonths: number, days: number): PartUse => ({
    kind: 'release-cord',
    material: 'cotton',
    now: exposure(ageMonths, 10, days),
    inspections: [],
  })
  const at = (part: PartUse, waterC: number) => partLife(part, { ...context, waterC }).decision
  expect(at(cord(3, 5), 1)).toBe('fine')
  expect(at(cord(4, 60), 1)).toBe('watch')
  expect(at(cord(4, 60), 11)).toBe('replace')
  expect(at(cord(13, 0), 1)).toBe('replace')
})

test('a frame lasts by its zinc, shorter the wetter', () => {
  const frame = (days: number): PartUse => ({
    kind: 'frame',
    material: 'steel-galvanised',
    diameterMm: 8,
    zincUm: 85,
    now: exposure(12, 10, days),
    inspections: [],
  })
  const left = (days: number) => partLife(frame(days), context).remainingMonths?.mid ?? NaN
  expect(left(300)).toBeLessThan(left(30))
  expect(partLife(frame(30), context).decision).toBe('fine')
  expect(partLife({ ...frame(300), zincUm: 5 }, context).decision).toBe('watch')
})

test('parts with a usual life are replaced as it ends', () => {
  const ties = (months: number): PartUse => ({ kind: 'ties', now: exposure(months, 0, 0), inspections: [] })
  expect(partLife(ties(1), context).decision).not.toBe('replace')
  expect(partLife(ties(14), context).decision).toBe('replace')
  const young = partLife(ties(1), context).remainingMonths
  expect(young?.low).toBeLessThan(young?.mid ?? NaN)
  expect(young?.mid).toBeLessThan(young?.high ?? NaN)
})

test('four ropes barely move what is believed of their life; many failures do', () => {
  const prior = priorBelief(3, 36, 2)
  const four = learn(prior, { failed: [18], survived: [20, 26, 30] })
  expect(four.exposure).toBe(151720)
  const range = scaleRange(four)
  expect(range.mid).toBeCloseTo(37.0, 1)
  expect(range.low).toBeCloseTo(30.5, 1)
  expect(range.high).toBeCloseTo(51.6, 0)
  expect(predictedSurvival(four, 24) - predictedSurvival(prior, 24)).toBeCloseTo(0.011, 2)
  const many = learn(prior, { failed: Array.from({ length: 30 }, () => 18), survived: [] })
  expect(scaleRange(many).high).toBeLessThan(range.low)
})

test('each kind of part has its own usual life, and ties and floats one by what they are made of', () => {
  const usual = (kind: PartUse['kind'], material?: string) => usualLife({ kind, material }, wearAssumptions)
  expect(usual('ties', 'Black nylon')?.value).toBeGreaterThan(usual('ties', 'nylon')?.value ?? NaN)
  expect(usual('float', 'EPS foam')).toBe(wearAssumptions.floatEpsLife)
  expect(usual('float', 'PVC')).toBe(wearAssumptions.floatLife)
  expect([usual('tag'), usual('door-hook'), usual('release-cord'), usual('chafe')]).toEqual([
    wearAssumptions.tagLife,
    wearAssumptions.doorHookLife,
    wearAssumptions.cordLife,
    wearAssumptions.chafeLife,
  ])
  // Metal wears by its zinc.
  expect([usual('frame'), usual('bait-basket')]).toEqual([undefined, undefined])
})

test('a bag lives by its fills; one found bad goes whatever its age', () => {
  const bag = (hauls: number, inspections: PartUse['inspections'] = []): PartUse => ({
    kind: 'bait-bag',
    now: exposure(3, hauls, 10),
    inspections,
  })
  expect(partLife(bag(1), context).reason).toMatch(/^1 fill; usual life .* Never inspected\.$/)
  const seen = partLife(bag(2, [{ at: exposure(1, 1, 1), grade: 1 }]), context).reason
  expect(seen).toMatch(/^2 fills; /)
  expect(seen).not.toContain('Never inspected')
  expect(partLife(bag(1, [{ at: exposure(1, 1, 1), grade: 4 }]), context)).toMatchObject({
    decision: 'replace',
    reason: 'The last inspection found a reason to discard it.',
  })
  expect(partLife(bag(0), context).remainingMonths).toBeUndefined()
  const chance = (hauls: number) => partLife(bag(hauls), context).failureChance ?? NaN
  expect(chance(60)).toBeGreaterThan(chance(6))
})

test('a measured loss of diameter counts as the grade it stands for', () => {
  const lost = (diameterLossPct: number, grade?: 0 | 1 | 2) =>
    partLife(
      rope(worked, [{ at: worked, diameterLossPct, ...(grade === undefined ? {} : { grade }) }]),
      context,
    )
  const most = retireDiameterLossPct
  expect(lost(most + 1).reason).toContain(`${most} % is the most`)
  expect(lost(most + 1, 1).decision).toBe('replace')
  // A rope that has lost 3 % is no better than grade 3, whatever it looked like.
  expect(lost(3, 0).strengthLeft).toEqual(lost(3).strengthLeft)
  expect(lost(3).strengthLeft?.mid).toBeLessThan(lost(1, 0).strengthLeft?.mid ?? NaN)
  // A smaller loss alone says nothing.
  expect(lost(1).strengthLeft).toEqual(partLife(rope(worked), context).strengthLeft)
})

test('parts of one’s own that failed early shorten what is believed of the others, and the reason says so', () => {
  const old = rope(exposure(11, 30, 20))
  const usual = usualBelief(old, wearAssumptions)
  const failed = [9, 10, 11, 10, 9, 11]
  const belief = learn(usual, { failed, survived: [11] })
  const learned = partLife(old, { ...context, belief, ownFailures: failed.length })
  const before = partLife(old, { ...context, belief: usual, ownFailures: 0 })
  expect(before.decision).toBe('fine')
  expect(learned.decision).not.toBe('fine')
  expect(learned.reason).toMatch(/by the 6 of yours that failed/)
  expect(learned.remainingMonths?.mid).toBeLessThan(before.remainingMonths?.mid ?? 0)
  expect(learned.strengthLeft).toEqual(before.strengthLeft)
})
