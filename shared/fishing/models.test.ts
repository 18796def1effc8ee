import fc from 'fast-check'
import { expect, test } from 'vitest'
import { baitReleased, baitStrength, decayRate, shieldedHalfLife } from './bait'
import { shellOf, tipFromNotch } from './body'
import { impliedEntryRate, meetsEntrance } from './entrances'
import { gapLength50, retention, ringWidth50, squareMeshWidth50 } from './selectivity'
import {
  fadingCatch,
  fadingPeakSoak,
  fillingCatch,
  soakToShare,
  steadyCatch,
  steadyPlateau,
} from './soak-closed-form'
import { soakCurve } from './soak-curve'
import { overlapShare, scentReach } from './spacing'
import { notchToTip, speciesBySlug } from './species'

const rate = (min: number, max: number) => fc.double({ min, max, noNaN: true })

test('the integrated soak agrees with what can be written down, where nothing escapes or nothing fades', () => {
  fc.assert(
    fc.property(rate(0.02, 0.4), rate(0.02, 0.3), rate(0, 0.05), (drawPerH, decayPerH, escapePerH) => {
      const at24 = (decay: number, escape: number) =>
        soakCurve({ drawPerH, decayPerH: decay, escapePerH: escape }, 24).share.at(-1)
      expect(at24(decayPerH, 0)).toBeCloseTo(fillingCatch(drawPerH, 1, decayPerH, 24), 6)
      const steady = { entryPerH: drawPerH, saturation: 1, escapePerH }
      expect(at24(0, escapePerH)).toBeCloseTo(steadyCatch(steady, 24), 6)
    }),
    { numRuns: 30 },
  )
})

test('a catch without fading rises to its plateau and reaches each share when it is said to', () => {
  const steady = { entryPerH: 1.5, saturation: 10, escapePerH: 0.0125 }
  for (const share of [0.1, 0.5, 0.9])
    expect(steadyCatch(steady, soakToShare(steady, share))).toBeCloseTo(share * steadyPlateau(steady), 10)
  expect(() => soakToShare(steady, 1)).toThrow(RangeError)
  expect(() => steadyPlateau({ ...steady, entryPerH: 0 })).toThrow(RangeError)
})

test('a fading catch is greatest at its peak soak, also where bait and crabs go at one rate', () => {
  fc.assert(
    fc.property(rate(0.01, 0.3), rate(0.002, 0.1), (decay, escape) => {
      const peak = fadingPeakSoak(decay, escape)
      const best = fadingCatch(1, decay, escape, peak)
      expect(fadingCatch(1, decay, escape, peak * 0.9)).toBeLessThan(best)
      expect(fadingCatch(1, decay, escape, peak * 1.1)).toBeLessThan(best)
    }),
  )
  expect(fadingPeakSoak(0.05, 0.05)).toBeCloseTo(20, 10)
  expect(fadingCatch(1, 0.05, 0.05, 20)).toBeCloseTo(fadingCatch(1, 0.05, 0.0500001, 20), 4)
  expect(() => fadingPeakSoak(0.05, 0)).toThrow(RangeError)
})

test('curves, bait and openings refuse what cannot be', () => {
  expect(() => soakCurve({ drawPerH: 0, decayPerH: 0.1, escapePerH: 0 }, 24)).toThrow(RangeError)
  expect(() => soakCurve({ drawPerH: 0.1, decayPerH: 0.1, escapePerH: 0 }, 24, 1)).toThrow(RangeError)
  expect(() => decayRate(0)).toThrow(RangeError)
  expect(() => shieldedHalfLife(8, 1.2)).toThrow(RangeError)
  expect(() => retention(100, 100, 0)).toThrow(RangeError)
  expect(() => squareMeshWidth50(60)).toThrow(RangeError)
  expect(() => scentReach(0, 0.06, 60)).toThrow(RangeError)
})

test('what bait has given off and what it still gives make a whole', () => {
  expect(baitStrength(decayRate(8), 8)).toBeCloseTo(0.5, 12)
  expect(baitStrength(0.1, 7) + baitReleased(0.1, 7)).toBeCloseTo(1, 12)
})

test('circles overlap wholly on one spot, not at all two radii apart, and less the further apart', () => {
  expect([overlapShare(50, 0), overlapShare(50, 100), overlapShare(50, 300)]).toEqual([1, 0, 0])
  fc.assert(
    fc.property(rate(1, 98), (spacing) => {
      expect(overlapShare(50, spacing + 1)).toBeLessThan(overlapShare(50, spacing))
    }),
  )
})

test('more entrances meet more crabs, up to all of them; entry rates come back from their shares', () => {
  expect(meetsEntrance(4, 0.1)).toBe(1)
  expect(meetsEntrance(1, 0.1)).toBeCloseTo(0.35, 12)
  expect(1 - Math.exp(-impliedEntryRate(0.63, 1.5) * 1.5)).toBeCloseTo(0.63, 12)
})

test('one crab measured two ways has one shell, as near as its proportions are known', () => {
  const swimmer = speciesBySlug('portunus-armatus')
  const tipMm = tipFromNotch(115, notchToTip)
  const byNotch = swimmer && shellOf(swimmer, 'notch-to-notch', 115)
  const byTip = swimmer && shellOf(swimmer, 'tip-to-tip', tipMm)
  expect(Math.abs((byNotch?.lengthMm.mid ?? NaN) - (byTip?.lengthMm.mid ?? NaN))).toBeLessThan(1)
  expect(swimmer && shellOf(swimmer, 'inside-points', 115)).toBeUndefined()
  const brown = speciesBySlug('cancer-pagurus')
  expect(brown && shellOf(brown, 'greatest-width', 150)?.depthMm?.mid).toBeCloseTo(51, 10)
  expect(brown && shellOf(brown, 'length', 93)?.depthMm).toBeUndefined()
})

test('gap and ring sizes scale with the opening', () => {
  expect(gapLength50(92, 0.54)).toBeCloseTo(2 * gapLength50(46, 0.54), 12)
  expect(ringWidth50(120, 0.92, 0.43)).toBeCloseTo(2 * ringWidth50(60, 0.92, 0.43), 12)
})
