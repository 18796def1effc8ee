import { starterPots } from '@shared/design/starter-pots'
import { expect, test } from 'vitest'
import { fishingAssumptions as sheet } from './assumptions'
import { bestSoak } from './outlook'
import { neighbours } from './neighbours'
import { catchOverSoak, scentOverSoak } from './soak-picture'

const pot = starterPots[1] ?? starterPots[0]
if (!pot) throw new Error('no starting shape')
const bag = { holder: 'mesh-bag', massKg: 0.5, at: 'centre', heightMm: 60 } as const
const at = <P extends { hours: number }>(points: readonly P[], hours: number) =>
  points.find((point) => point.hours === hours)

test('scent starts whole, fades, and a basket keeps more of it for longer than a clip', () => {
  const clip = scentOverSoak({ ...bag, holder: 'clip' }, sheet)
  const basket = scentOverSoak({ ...bag, holder: 'wire-basket' }, sheet)
  expect(clip[0]?.share).toEqual({ low: 1, mid: 1, high: 1 })
  for (let i = 1; i < clip.length; i++) expect(clip[i]?.share.mid).toBeLessThan(clip[i - 1]?.share.mid ?? 0)
  expect(at(basket, 24)?.share.mid).toBeGreaterThan(at(clip, 24)?.share.mid ?? 1)
})

test('the catch is a share of its own best, nothing at the start, nine tenths at the best soak', () => {
  const shape = catchOverSoak(pot, bag, sheet)
  expect(shape[0]?.share).toEqual({ low: 0, mid: 0, high: 0 })
  expect(Math.max(...shape.map(({ share }) => share.mid))).toBeCloseTo(1, 3)
  const best = bestSoak(pot, bag, sheet).mid
  expect(at(shape, Math.ceil(best * 2) / 2)?.share.mid).toBeGreaterThanOrEqual(0.9)
  expect(at(shape, Math.floor(best * 2) / 2 - 0.5)?.share.mid).toBeLessThan(0.9)
  for (const { share } of shape) {
    expect(share.low).toBeLessThanOrEqual(share.mid)
    expect(share.mid).toBeLessThanOrEqual(share.high)
  }
})

test('neighbours: floats that swing further than half the spacing meet, and what is not known is left out', () => {
  expect(neighbours({ spacingM: 40, swingM: 25, currentMps: 0.5, soakH: 12 }, sheet)).toMatchObject({
    floatsApartM: -10,
    reachM: 100,
  })
  const near = neighbours({ spacingM: 20, currentMps: 0.5, soakH: 12 }, sheet).shared ?? 0
  const far = neighbours({ spacingM: 150, currentMps: 0.5, soakH: 12 }, sheet).shared ?? 1
  expect(near).toBeGreaterThan(far)
  expect(neighbours({ spacingM: 200, currentMps: 0.5, soakH: 12 }, sheet).shared).toBe(0)
  expect(neighbours({ spacingM: 40 }, sheet)).toEqual({ enoughM: 100 })
  // In a short soak the crab has not the time to walk from further off: 1800 s at 1/(1/0.5 + 1/0.065) m/s.
  expect(neighbours({ spacingM: 40, currentMps: 0.065, soakH: 0.5 }, sheet).reachM).toBeCloseTo(58.5, 6)
})
