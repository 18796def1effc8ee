import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { channel, standard, trip, without, check, figure, finding } from '../../tests/fixtures/checked-pot'
import { starterPots } from '@shared/design/starter-pots'
import type { Pot } from '@shared/schema/pot'

describe('float', () => {
  test('a rope shorter than the depth fails and says so', () => {
    const short = check({
      ...standard,
      rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 6 },
    })
    expect(short.verdicts.floatShows.state).toBe('fails')
    expect(finding(short, 'floatShows', 'float:rope-length')?.what).toMatch(
      /^The rope is 6 m; .* asks for 1\d m/,
    )
    expect(finding(short, 'floatShows', 'float:shows')?.what).toMatch(/^Drawn .* m under/)
  })
  test('a rope long enough for the depth but not for the current fails, and says which', () => {
    const { findings } = check(standard, { conditions: { ...channel, surfaceCurrentMps: 1 } }).verdicts
      .floatShows
    const [shows, length] = findings
    expect(shows?.what).toMatch(/ A rope of 23 m would keep it up\.$/)
    expect(length).toMatchObject({ rule: 'float:rope-length', state: 'fails', actual: 22 })
    expect(length?.what).toMatch(/^The rope is 22 m: enough for the depth, but .* takes 23 m/)
    expect(Number(length?.limit)).toBeGreaterThan(22)
  })
  test('what is said of the rope never contradicts its state', () => {
    for (const pot of starterPots)
      for (const surfaceCurrentMps of [0, 0.3, 0.5, 0.7, 0.9, 1.2]) {
        const { findings } = check(pot, { conditions: { ...channel, surfaceCurrentMps } }).verdicts.floatShows
        const length = findings.find((f) => f.rule === 'float:rope-length')
        expect(length?.state === 'fails').toBe(Number(length?.actual) < Number(length?.limit))
      }
  })
  test('high water asks most of the float, whatever the rope', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('PP', 'PE', 'PA', 'PES', 'lead-core'),
        fc.double({ min: 4, max: 80, noNaN: true }),
        fc.double({ min: 0, max: 1.5, noNaN: true }),
        fc.double({ min: 0, max: 2, noNaN: true }),
        (material, lengthM, surfaceCurrentMps, massKg) => {
          const rope: Pot['rope'] = {
            ...{ material, construction: '3-strand', diameterMm: 8, lengthM },
            weights: [{ massKg, belowFloatM: 3 }],
          }
          const asked = (depthM: number) => {
            const sea = { ...channel, surfaceCurrentMps, depthLowM: depthM, depthHighM: depthM }
            return figure(check({ ...standard, rope }, { conditions: sea }), 'floatShows', 'verticalN').mid
          }
          expect(asked(11)).toBeGreaterThan(asked(5) * 0.98 - 0.1)
        },
      ),
      { numRuns: 60 },
    )
  })
  test('a float heavier than its water sinks', () => {
    const stone: Pot = {
      ...standard,
      float: {
        shape: 'sphere',
        diameterMm: 100,
        massKg: 3,
        material: 'wood',
        colours: ['red'],
        pattern: 'solid',
      },
    }
    expect(check(stone).verdicts.floatShows).toMatchObject({ state: 'fails' })
  })
  test('floating rope on the surface at slack is told, as advice, and does not fail the float', () => {
    const floating = check({
      ...standard,
      rope: { material: 'PP', construction: '3-strand', diameterMm: 8, lengthM: 22 },
    })
    expect(finding(floating, 'floatShows', 'float:rope-on-surface')).toMatchObject({
      standing: 'advice',
      state: 'holds',
    })
  })
  test('tied off, no float has to show, whatever float it has', () => {
    expect(check(standard, { trip: { ...trip, tiedOff: true } }).verdicts.floatShows.findings).toHaveLength(1)
    const tied = check(without('float'), { trip: { ...trip, tiedOff: true } })
    expect(tied.verdicts.floatShows.state).toBe('holds')
    expect(tied.verdicts.holdsBottom.state).not.toBe('cannot-tell')
  })
  test('the pull-under current draws it under: a little more does, a little less does not', () => {
    const limit = figure(check(standard), 'floatShows', 'pullUnderCurrentMps').mid
    const dip = (surfaceCurrentMps: number) =>
      figure(check(standard, { conditions: { ...channel, surfaceCurrentMps } }), 'floatShows', 'dipM').mid
    expect(dip(limit * 1.02)).toBeGreaterThan(0)
    expect(dip(limit * 0.98)).toBe(0)
  })
})
