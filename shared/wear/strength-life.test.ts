import normalCdf from '@stdlib/stats-base-dists-normal-cdf'
import { expect, test } from 'vitest'
import { wearAssumptions } from './assumptions'
import type { LifeContext } from './judgement'
import type { Exposure, PartUse } from './part-use'
import { retireDiameterLossPct } from './rope'
import { strengthLife } from './strength-life'

const context: LifeContext = { sheet: wearAssumptions, aheadMonths: 6 }
const at = (ageMonths: number, hauls: number, immersedDays: number): Exposure => ({
  ...{ ageMonths, hauls, immersedDays },
  ashoreDays: { sun: 0, shade: 0, indoors: 0, unstated: ageMonths * 30.4375 - immersedDays },
})
const now = at(24, 120, 60)
const rope: PartUse = { kind: 'rope', material: 'PP', now, inspections: [] }
const netting: PartUse = { kind: 'netting', material: 'PE', now: at(6, 20, 20), inspections: [] }
const seen = (part: PartUse, found: Omit<PartUse['inspections'][number], 'at'>): PartUse => ({
  ...part,
  inspections: [{ at: part.now, ...found }],
})
const reason = (part: PartUse, change: Partial<LifeContext> = {}) =>
  strengthLife(part, { ...context, ...change }).reason

test('what is left falls by halves with use, and the chance of too little is that of a log-normal', () => {
  const { value: logSd } = wearAssumptions.strengthLogSd
  for (const requiredShare of [0.3, 0.5, 0.7]) {
    const life = strengthLife(rope, { ...context, requiredShare })
    const mid = life.strengthLeft?.mid ?? NaN
    expect(life.strengthLeft?.low).toBeCloseTo(mid * Math.exp(-1.2815515655 * logSd), 9)
    // Two years took it to `mid`; six months more take a quarter of that again, on the logarithm.
    const chance = normalCdf(Math.log(requiredShare / mid ** 1.25), 0, logSd)
    expect(life.failureChance).toBeCloseTo(chance, 9)
    // At the same rate it is down to the share asked for when the logarithms say so.
    const months = (24 * Math.log(requiredShare)) / Math.log(mid) - 24
    expect(life.remainingMonths?.mid).toBeCloseTo(Math.max(0, months), 9)
  }
})

test('a rope whose load is not known must keep half, netting six tenths', () => {
  const half = strengthLife(rope, { ...context, requiredShare: 0.5 })
  expect(strengthLife(rope, context).failureChance).toBe(half.failureChance)
  expect(reason(rope)).toMatch(/^Chance that under 50 % of its strength is left: .* from use alone\.$/)
  expect(reason(rope, { requiredShare: 0.35 })).toContain('35 % of its strength, which the haul asks for, is')
  // The load on the rope says nothing of the netting.
  expect(strengthLife(netting, { ...context, requiredShare: 0.9 })).toEqual(strengthLife(netting, context))
  expect(reason(netting, { requiredShare: 0.9 })).toContain('under 60 % of its strength is left')
  expect(reason(seen(rope, { grade: 0 }))).not.toContain('from use alone')
})

test('a rope too weak when new is said to be so', () => {
  expect(reason(rope, { requiredShare: 1 })).toContain('Even new it is too weak')
  expect(strengthLife(rope, { ...context, requiredShare: 1.2 }).decision).toBe('replace')
  expect(reason(rope, { requiredShare: 0.99 })).not.toContain('Even new')
})

test('a reason to discard decides, and is told apart from a loss that was measured', () => {
  const grade4 = 'The last inspection found a reason to discard it.'
  expect(reason(seen(rope, { grade: 4 }))).toBe(grade4)
  expect(reason(seen(netting, { grade: 4 }))).toBe(grade4)
  expect(reason(seen(rope, { grade: 4, diameterLossPct: 2 }))).toBe(grade4)
  expect(reason(seen(rope, { diameterLossPct: 7 }))).toBe(
    'The rope has lost 7 % of its diameter; 5 % is the most.',
  )
  // Just the most is not more than it.
  expect(reason(seen(rope, { diameterLossPct: retireDiameterLossPct }))).toContain('Chance that')
  // A discarded part is at best as strong as the grade before.
  const strength = (grade: 3 | 4) => strengthLife(seen(rope, { grade }), context).strengthLeft
  expect(strength(4)).toEqual(strength(3))
})

test('broken bars are mended before the crab of the place gets out', () => {
  const bars = (brokenBars: number) => seen(netting, { grade: 0, brokenBars })
  const mendAt = { crab: 'Mud crab', bars: 3, letOutAt: 4 }
  expect(reason(bars(1))).toBe('1 broken bar. Mend before it grows.')
  expect(reason(bars(2))).toBe('2 broken bars in a row. Mend or replace: a crab gets out soon after 2.')
  expect(reason(bars(2), { mendAt })).toBe('2 broken bars in a row. Mend before it grows.')
  expect(reason(bars(3), { mendAt })).toBe(
    '3 broken bars in a row. Mend or replace: a legal mud crab gets out through 4.',
  )
  expect([1, 2, 3].map((n) => strengthLife(bars(n), { ...context, mendAt }).decision)).toEqual([
    'watch',
    'watch',
    'replace',
  ])
})

test('a part never used wears no months', () => {
  expect(strengthLife({ ...rope, now: at(0, 0, 0) }, context).remainingMonths).toBeUndefined()
})
