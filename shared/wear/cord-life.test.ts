import { expect, test } from 'vitest'
import { wearAssumptions } from './assumptions'
import { cordLife } from './cord-life'
import type { PartUse } from './part-use'

const sheet = wearAssumptions
/** At the temperature of the trial nothing is scaled: a cord halves in ln 2 over its rate. */
const context = { sheet, aheadMonths: 6, waterC: sheet.rotReferenceC.value }
const halfDays = Math.LN2 / sheet.rotPerDay.value
const cord = (ageMonths: number, immersedDays: number): PartUse => ({
  kind: 'release-cord',
  material: 'cotton',
  now: { ageMonths, hauls: 4, immersedDays, ashoreDays: { sun: 0, shade: 0, indoors: 0, unstated: 0 } },
  inspections: [],
})

test('months left are the days to its half-life at the days a month so far, and never past the season', () => {
  const { remainingMonths, reason } = cordLife(cord(2, 40), context)
  expect(remainingMonths?.mid).toBeCloseTo((halfDays - 40) / 20, 9)
  expect(remainingMonths?.low).toBeCloseTo(Math.max(0, Math.LN2 / sheet.rotPerDay.high - 40) / 20, 9)
  expect(reason).toBe(`40 days in the water; about half strength at ${Math.round(halfDays)} days.`)
  expect(cordLife(cord(8, 2), context).remainingMonths?.mid).toBe(4)
  expect(cordLife(cord(3, 0), context).remainingMonths).toEqual({ low: 9, mid: 9, high: 9 })
})

test('it is renewed at its half-life, watched before, and renewed each season whatever its days', () => {
  const decision = (ageMonths: number, days: number) => cordLife(cord(ageMonths, days), context).decision
  expect(decision(6, halfDays + 1)).toBe('replace')
  expect(decision(6, halfDays - 1)).toBe('watch')
  expect(decision(6, Math.LN2 / sheet.rotPerDay.high - 1)).toBe('fine')
  expect(decision(12, 0)).toBe('replace')
  expect(cordLife(cord(14, 0), context).remainingMonths).toEqual({ low: 0, mid: 0, high: 0 })
  expect(cordLife(cord(6, halfDays + 40), context).remainingMonths?.mid).toBe(0)
})

test('one found bad goes', () => {
  const bad = { ...cord(1, 1), inspections: [{ at: cord(1, 1).now, grade: 4 }] } as const
  expect(cordLife(bad, context)).toEqual({
    decision: 'replace',
    reason: 'The last inspection found a reason to discard it.',
    inspected: true,
  })
})
