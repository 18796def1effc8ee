import type { PartReport } from './locker-lives'
import { expect, test } from 'vitest'
import { lifeLeft, wearByPart } from './life-left'

type Decision = PartReport['life']['decision']

function report(
  decision: Decision,
  months: number | undefined,
  ageMonths: number,
  kind = 'rope',
): PartReport {
  const remainingMonths = months === undefined ? {} : { remainingMonths: { low: 0, mid: months, high: 99 } }
  return {
    life: { decision, reason: '', inspected: false, ...remainingMonths },
    use: { ageMonths },
    part: { part: { id: 'x', kind, installedOn: '2026-01-01' } },
  } as unknown as PartReport
}

test('the share left never contradicts the decision', () => {
  expect(lifeLeft(report('fine', 30, 10))).toBeCloseTo(0.75, 9)
  expect(lifeLeft(report('fine', 1, 99))).toBeGreaterThan(0.4)
  expect(lifeLeft(report('watch', 99, 1))).toBe(0.4)
  expect(lifeLeft(report('watch', 0, 20))).toBeGreaterThan(0.15)
  expect(lifeLeft(report('replace', 50, 10))).toBe(0.15)
  expect(lifeLeft(report('replace', undefined, 10))).toBe(0.15)
  expect(lifeLeft(report('fine', 0, 0))).toBeUndefined()
  expect(lifeLeft(report('fine', undefined, 4))).toBeUndefined()
})

test('of two parts of one kind the worse colours the picture; what is not known stays out', () => {
  const wear = wearByPart([
    report('fine', 30, 10),
    report('replace', 2, 10),
    report('fine', undefined, 1, 'float'),
    report('fine', 40, 10, 'frame'),
  ])
  expect(wear.rope).toBe(0.15)
  expect(wear['base-ring']).toBeCloseTo(0.8, 9)
  expect(wear).not.toHaveProperty('float')
})
