import { describe, expect, test } from 'vitest'
import {
  channel,
  starter,
  standard,
  trip,
  without,
  check,
  figure,
  finding,
} from '../../tests/fixtures/checked-pot'
import { massProperties } from '@shared/design/mass-properties'
import { builtInMaterials } from '@shared/design/materials/built-in'
import type { Pot } from '@shared/schema/pot'

describe('lifting and stowing', () => {
  test('peak: 1.5 g (pot, bait, catch and 3.5 kg of water)', () => {
    const mass = massProperties(standard, builtInMaterials)
    const byHand = 1.5 * 9.81 * (mass.dryMassKg + 0.5 + 3 + 3.5)
    expect(figure(check(standard), 'lifts', 'peakN').mid).toBeCloseTo(byHand, 3)
  })
  test('8 mm polyester at 9.1 kN, bowline 0.65, factor 8: 739 N', () => {
    expect(check(standard).verdicts.lifts.figures?.['ropeSafeN']).toBeCloseTo((9100 * 0.65) / 8, 3)
  })
  test('a worn rope bears less, and can fail', () => {
    const worn = check(standard, { wear: { ropeStrengthLeft: 0.2 } })
    expect(finding(worn, 'lifts', 'lifts:rope')?.state).toBe('fails')
  })
  test('close says both cautious figures, and the strength its own source', () => {
    const rope = finding(check(starter('starter-heavy')), 'lifts', 'lifts:rope')
    expect(rope?.state).toBe('close')
    expect(rope?.what).toMatch(/by cautious figures 770 against 300 N\.$/)
    expect(rope?.source?.publisher).toBeUndefined()
    expect(rope?.source?.title).toMatch(/^Judgement/)
  })
  test('a catch that is not given is not spoken of as counted', () => {
    expect(finding(check(without('catchKg')), 'lifts', 'lifts:person')?.what).toMatch(/no catch counted/)
    expect(finding(check(standard), 'lifts', 'lifts:person')?.what).toMatch(/with catch and water/)
  })
  test('what is advised is said for a man and for a woman', () => {
    const person = (pot: Pot) => finding(check(pot), 'lifts', 'lifts:person')
    expect(person(standard)).toMatchObject({ state: 'close', limit: 20 })
    expect(person(standard)?.what).toMatch(
      /advised are 10 at arm’s length to 20 kg close to the body for a man, 7 to 13 kg for a woman\.$/,
    )
    expect(person(starter('starter-compact'))).toMatchObject({ state: 'holds' })
    expect(person(starter('starter-compact'))?.what).toMatch(/10 kg .* a man .* a woman it is 7\.$/)
    expect(person({ ...starter('starter-compact'), catchKg: 0 })?.what).toMatch(/advice for one person\.$/)
  })
  test('thin rope that cuts into the hands is told, as advice; a hauler has no hands', () => {
    const thin: Pot = {
      ...standard,
      rope: { material: 'PES', construction: '3-strand', diameterMm: 6, lengthM: 22 },
    }
    expect(finding(check(thin), 'lifts', 'lifts:grip')).toMatchObject({ standing: 'advice', state: 'holds' })
    expect(finding(check(standard), 'lifts', 'lifts:grip')).toBeUndefined()
    expect(finding(check({ ...thin, catchKg: 20 }), 'lifts', 'lifts:grip')).toBeUndefined()
  })
  test('a boat that heaves pulls hardest on the way up, faster still with a hauler', () => {
    const sea = { conditions: { ...channel, waves: { heightM: 2.5, periodS: 6 } } }
    const hand = finding(check(standard, sea), 'lifts', 'lifts:rope')
    const hauler = finding(check({ ...standard, catchKg: 12 }, sea), 'lifts', 'lifts:rope')
    expect(hand?.what).toMatch(/ on the way up;/)
    expect(hauler?.what).toMatch(/ on the way up by a hauler;/)
    expect(Number(hauler?.actual)).toBeGreaterThan(Number(hand?.actual))
  })
  test('waves that cannot stand so high are counted where they break, and said', () => {
    const steep = check(standard, { conditions: { ...channel, waves: { heightM: 8, periodS: 1 } } })
    expect(finding(steep, 'holdsBottom', 'range:waves')?.what).toBe(
      'Waves of 8 m every 1 s break here; 0.22 m is counted.',
    )
    expect(figure(steep, 'lifts', 'peakN').high).toBeLessThan(1000)
    const swell = check(standard, { conditions: { ...channel, waves: { heightM: 1, periodS: 6 } } })
    expect(finding(swell, 'holdsBottom', 'range:waves')).toBeUndefined()
    expect(finding(swell, 'holdsBottom', 'range:no-waves')).toBeUndefined()
    expect(finding(check(standard), 'holdsBottom', 'range:no-waves')?.what).toMatch(/^No waves are given/)
  })
  test('four of them fit the space; five do not fit the load', () => {
    expect(check(standard, { trip }).verdicts.stows).toMatchObject({
      state: 'holds',
      figures: { fitCount: 6 },
    })
    expect(check(standard, { trip: { ...trip, pots: 7 } }).verdicts.stows.state).toBe('fails')
  })
})
