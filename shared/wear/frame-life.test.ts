import { expect, test } from 'vitest'
import { wearAssumptions } from './assumptions'
import { frameLife } from './frame-life'
import type { Exposure, PartUse } from './part-use'

/*
 * Worked by hand at half the time in the water: zinc goes at 0.5·20 + 0.5·6 = 13 µm a year (16.7 and 9.6 at the
 * ends), and an 8 mm bar keeps 0.7 of its section for 8(1 − √0.7)/(2·0.1) = 6.534 years (2.613 and 18.667).
 */

const context = { sheet: wearAssumptions, aheadMonths: 6 }
const half: Exposure = {
  ...{ ageMonths: 12, hauls: 10, immersedDays: 6 * 30.4 },
  ashoreDays: { sun: 0, shade: 0, indoors: 0, unstated: 6 * 30.4 },
}
const frame = (part: Partial<PartUse>): PartUse => ({
  kind: 'frame',
  material: 'steel-galvanised',
  diameterMm: 8,
  now: half,
  inspections: [],
  ...part,
})

test('zinc first, then steel, less the age', () => {
  const { remainingMonths, reason, decision } = frameLife(frame({ zincUm: 85 }), context)
  expect(remainingMonths?.low).toBeCloseTo(12 * (85 / 16.7 + 2.6134) - 12, 1)
  expect(remainingMonths?.mid).toBeCloseTo(12 * (85 / 13 + 6.5336) - 12, 1)
  expect(remainingMonths?.high).toBeCloseTo(12 * (85 / 9.6 + 18.667) - 12, 1)
  expect(decision).toBe('fine')
  expect(reason).toBe(
    'Zinc still on. Life left about 140 months, could be 80, could be 320, taking 50 % of the time in the water.',
  )
})

test('a coat that is not stated is the usual one, and no bar adds no steel', () => {
  const part = frame({ diameterMm: undefined })
  expect(frameLife(part, context).remainingMonths?.mid).toBeCloseTo((12 * 45) / 13 - 12, 2)
})

test('what was never in the water loses zinc to the air alone', () => {
  const now = { ...half, ageMonths: 0, immersedDays: 0 }
  const { remainingMonths } = frameLife(frame({ zincUm: 60, diameterMm: undefined, now }), context)
  expect(remainingMonths?.mid).toBeCloseTo(120, 6)
})

test('no more time is spent in the water than there is', () => {
  const now = { ...half, immersedDays: 900 }
  expect(frameLife(frame({ now }), context).reason).toContain('taking 100 % of the time in the water')
})

test.each([
  ['zinc gone before its time is up', { zincUm: 10 }, 'watch', /^The zinc is likely gone\./],
  ['zinc that will not last the time ahead', { zincUm: 16 }, 'watch', /^Zinc still on\./],
  ['steel without zinc', { material: 'steel-plain' }, 'watch', /^No zinc\. Life left about 66 months/],
  ['thin steel without zinc', { material: 'steel-black', diameterMm: 1 }, 'replace', /likely none/],
] as const)('%s', (_name, part, decision, reason) => {
  const life = frameLife(frame(part), context)
  expect(life.decision).toBe(decision)
  expect(life.reason).toMatch(reason)
})

test('plain steel counts no coat, whatever is stated', () => {
  const life = frameLife(frame({ material: 'steel-plain', zincUm: 85 }), context)
  expect(life.remainingMonths?.mid).toBeCloseTo(12 * 6.5336 - 12, 1)
})

test.each(['steel-stainless', 'wire-coated', 'plastic'])(
  'no rate is claimed for %s, only a look',
  (material) => {
    const unseen = frameLife(frame({ material }), context)
    expect(unseen).toEqual({
      decision: 'watch',
      reason: 'No rate of wear means anything here: look for pits, cuts and rust at the welds.',
      inspected: false,
    })
    const seen = frameLife(frame({ material, inspections: [{ at: half, grade: 1 }] }), context)
    expect(seen).toMatchObject({ decision: 'fine', inspected: true })
  },
)

test('what the last inspection found decides, not an earlier one', () => {
  const grades = (...found: (1 | 4)[]) => frame({ inspections: found.map((grade) => ({ at: half, grade })) })
  expect(frameLife(grades(1, 4), context)).toEqual({
    decision: 'replace',
    reason: 'The last inspection found a reason to discard it.',
    inspected: true,
  })
  expect(frameLife(grades(4, 1), context)).toMatchObject({ decision: 'fine', inspected: true })
})
