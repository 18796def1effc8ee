import fc from 'fast-check'
import * as v from 'valibot'
import { describe, expect, test } from 'vitest'
import { arbitraryPot, completePot } from '../../tests/fixtures/arbitrary-pot'
import { massProperties, submergedWeight } from '@shared/design/mass-properties'
import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { CheckSchema, type Check, type Spread } from '@shared/schema/check'
import type { Pot } from '@shared/schema/pot'
import type { Trip } from '@shared/schema/trip'
import { bottoms } from '@shared/schema/water'
import type { Conditions } from '@shared/tides/conditions'
import { checkPot, type CheckInput } from './check-pot'

const starter = (id: string): Pot => {
  const pot = starterPots.find((p) => p.id === id)
  if (!pot) throw new Error(id)
  return pot
}
const standard = starter('starter-standard')

const channel: Conditions = {
  surfaceCurrentMps: 0.6,
  depthLowM: 8,
  depthHighM: 11,
  bottom: 'sand',
  waves: undefined,
  temperatureC: undefined,
  salinityPsu: undefined,
  basis: 'a current typed in',
}

const trip: Trip = {
  format: 'potwright/trip',
  version: 1,
  pots: 4,
  stow: { lengthMm: 1200, widthMm: 1000, heightMm: 500, maxKg: 60 },
}

const without = (key: keyof Pot): Pot =>
  Object.fromEntries(Object.entries(standard).filter(([name]) => name !== key)) as Pot

const check = (pot: Pot, more: Partial<CheckInput> = {}): Check =>
  checkPot({
    pot,
    materials: builtInMaterials,
    coefficients: defaultCoefficients,
    conditions: channel,
    ...more,
  })

const figure = (result: Check, verdict: keyof Check['verdicts'], name: string): Spread => {
  const found = result.verdicts[verdict].figures?.[name]
  if (typeof found !== 'object' || Array.isArray(found)) throw new Error(`${verdict}.${name}`)
  return found
}
const slides = (pot: Pot, more: Partial<CheckInput> = {}) =>
  figure(check(pot, more), 'holdsBottom', 'slideCurrentMps')
const finding = (result: Check, verdict: keyof Check['verdicts'], rule: string) =>
  result.verdicts[verdict].findings.find((f) => f.rule === rule)

describe('a pot worked by hand', () => {
  // Two rings and netting, tied off so that no rope pulls, on sand in 10 m, 1 m/s at the surface.
  const plain: Pot = {
    format: 'potwright/pot',
    version: 1,
    id: 'plain',
    name: 'Plain round',
    gearKind: 'pot',
    body: { shape: 'round', baseDiameterMm: 800, topDiameterMm: 800, heightMm: 300, folds: false, feet: 0 },
    frame: [{ role: 'base-ring', material: 'steel-black', barDiameterMm: 12 }],
    netting: { material: 'PE', twineDiameterMm: 2, barLengthMm: 20, knotted: false },
  }
  const result = check(plain, {
    conditions: { ...channel, surfaceCurrentMps: 1, depthLowM: 10, depthHighM: 10 },
    trip: { format: 'potwright/trip', version: 1, tiedOff: true },
  })

  test('weight: 2.232 kg of steel and 0.171 kg of PE, 19.2 N in the water', () => {
    // Steel π·0.8·0.888 = 2.2318 kg at 7850; netting 2·1.975e-3/0.02·(0.754 + 2·0.5027) = 0.3475 kg at 950.
    const steel = Math.PI * 0.8 * 0.888
    const net = ((2 * 1.975e-3) / 0.02) * (Math.PI * 0.8 * 0.3 + 2 * Math.PI * 0.16)
    const steelVolume = Math.PI * 0.8 * (Math.PI / 4) * 0.012 ** 2
    const byHand = 9.81 * (steel + net - 1025 * (steelVolume + net / 950))
    const mass = massProperties(plain, builtInMaterials)
    expect(submergedWeight(mass, 1025, 9.81)).toBeCloseTo(byHand, 1)
    expect(result.verdicts.holdsBottom.figures?.['submergedWeightN']).toBeCloseTo(byHand, 1)
  })

  test('drag: 0.24 m2 of netting front and back, slowed behind, top and base along, one ring', () => {
    // Sn = 2·0.1 - 0.01 = 0.19; Cd = 0.04 + (-0.04 + Sn - 1.24 Sn² + 13.7 Sn³) = 0.2392; r = 1 - 0.46 Cd = 0.890.
    const sn = 0.19
    const cd = sn - 1.24 * sn ** 2 + 13.7 * sn ** 3
    const r = 1 - 0.46 * cd
    const square = (from: number, to: number) =>
      ((7 / 9) * (to ** (9 / 7) - from ** (9 / 7))) / ((to - from) * 10 ** (2 / 7))
    const wall = 0.24 * cd * (1 + r * r) * square(0, 0.3)
    const level = 0.04 * Math.PI * 0.16 * ((0.3 / 10) ** (2 / 7) + square(0, 0.01))
    const ring = 2 * 1.2 * 0.8 * 0.012 * square(0, 0.012)
    const byHand = 0.5 * 1025 * (wall + level + ring)
    expect(figure(result, 'holdsBottom', 'dragN').mid / byHand).toBeCloseTo(1, 2)
    // Grip 0.4 on sand, no lift.
    const weight = Number(result.verdicts.holdsBottom.figures?.['submergedWeightN'])
    expect(figure(result, 'holdsBottom', 'slideFactor').mid / ((0.4 * weight) / byHand)).toBeCloseTo(1, 2)
  })

  test('without a rope the sliding current is the current over the root of the load', () => {
    const factor = figure(result, 'holdsBottom', 'slideFactor').mid
    expect(figure(result, 'holdsBottom', 'slideCurrentMps').mid).toBeCloseTo(Math.sqrt(factor), 2)
  })
})

describe('the starting shapes', () => {
  test('the standard round holds to about 0.6 m/s on sand, the heavy one to more, the compact one to less', () => {
    expect(slides(standard).mid).toBeGreaterThan(0.5)
    expect(slides(standard).mid).toBeLessThan(0.8)
    expect(slides(starter('starter-heavy')).mid).toBeGreaterThan(slides(standard).mid)
    expect(slides(starter('starter-compact')).mid).toBeLessThan(slides(standard).mid)
  })
})

describe('states', () => {
  const at = (surfaceCurrentMps: number) =>
    check(standard, { conditions: { ...channel, surfaceCurrentMps } }).verdicts.holdsBottom
  test('holds when the cautious outlook does, close when only the middle one does, else fails', () => {
    expect(at(0.4).state).toBe('holds')
    expect(at(0.52).state).toBe('close')
    expect(at(0.8).state).toBe('fails')
  })
  test('what fails says at what current, and what ring would hold', () => {
    const [slide] = at(0.8).findings
    expect(slide?.what).toMatch(
      /^Slides at 0\.[56]\d? m\/s; the strongest current here is 0\.8\. A base ring of \d+ mm bar, .* kg heavier, would hold\.$/,
    )
    expect(slide).toMatchObject({ part: 'base-ring', unit: 'm/s', standing: 'engineering', limit: 0.8 })
    expect(slide?.margin).toBeCloseTo(Number(slide?.actual) - 0.8, 9)
  })
  test('the ring that was advised holds, and the next thinner one does not', () => {
    const needed = Number(/of (\d+) mm bar/.exec(at(0.7).findings[0]?.what ?? '')?.[1])
    const withBar = (barDiameterMm: number) => ({
      ...standard,
      frame: (standard.frame ?? []).map((m) => (m.role === 'base-ring' ? { ...m, barDiameterMm } : m)),
    })
    expect(slides(withBar(needed)).mid).toBeGreaterThan(0.7)
    expect(slides(withBar(needed - 2)).mid).toBeLessThan(0.7)
  })
  test('a pot from the scales is advised a ring too: the change weighs what it weighs', () => {
    const computed = massProperties(standard, builtInMaterials).computedMassKg
    const said = (pot: Pot) =>
      check(pot, { conditions: { ...channel, surfaceCurrentMps: 0.8 } }).verdicts.holdsBottom.findings[0]
        ?.what
    expect(said({ ...standard, measuredMassKg: computed })).toBe(said(standard))
  })
  test('where no bar can be thickened, weight on the base is advised', () => {
    const frame = (standard.frame ?? []).filter((member) => member.role !== 'base-ring')
    const { findings } = check({ ...standard, frame }, { conditions: { ...channel, surfaceCurrentMps: 0.8 } })
      .verdicts.holdsBottom
    expect(findings[0]?.what).toMatch(/About .* kg more ballast on the base would hold\.$/)
  })
  test('sentences in the reader’s units', () => {
    const [slide] = check(standard, { units: 'imperial', conditions: { ...channel, surfaceCurrentMps: 0.8 } })
      .verdicts.holdsBottom.findings
    expect(slide?.what).toMatch(/Slides at 1\.\d kn; .* lb heavier/)
  })
})

describe('what moves a pot in still water', () => {
  const still = (pot: Pot, more: Partial<Conditions> = {}) =>
    check(pot, { conditions: { ...channel, surfaceCurrentMps: 0.1, ...more } }).verdicts.holdsBottom
      .findings[0]
  test('a large float on a short rope lifts it', () => {
    const lifted = still({
      ...standard,
      rope: { material: 'PES', construction: '3-strand', diameterMm: 8, lengthM: 6 },
      float: {
        shape: 'sphere',
        diameterMm: 400,
        massKg: 1,
        material: 'PVC',
        colours: ['red'],
        pattern: 'solid',
      },
    })
    expect(lifted).toMatchObject({
      state: 'fails',
      what: 'Slides: the float lifts it by the rope. Use a longer rope, or a smaller float.',
    })
  })
  test('waves alone', () => {
    expect(still(standard, { waves: { heightM: 3, periodS: 9 } })?.what).toMatch(
      /^Slides even in still water; the strongest current here is 0\.1\./,
    )
  })
  test('a pot of floating bars pulls up', () => {
    const frame = (standard.frame ?? []).map((member) => ({ ...member, material: 'pp' }))
    expect(still({ ...standard, frame, ballast: [] })?.what).toMatch(/^The pot floats: .* pulls up with \d/)
  })
})

describe('cannot tell, with what is missing', () => {
  test.each([
    ['rope', 'holdsBottom', 'the rope'],
    ['float', 'floatShows', 'the float'],
    ['frame', 'holdsBottom', 'the frame'],
    ['netting', 'lifts', 'the netting'],
  ] as const)('no %s: %s', (key, verdict, missing) => {
    const { state, findings } = check(without(key)).verdicts[verdict]
    expect(state).toBe('cannot-tell')
    expect(findings[0]?.missing).toContain(missing)
  })
  test('no current, no bottom, no space, no rules', () => {
    const { verdicts } = check(standard, { conditions: { missing: 'the current at this water' } })
    expect(verdicts.holdsBottom.findings[0]?.missing).toBe('the current at this water')
    expect(verdicts.floatShows.state).toBe('cannot-tell')
    expect(verdicts.stows.findings[0]?.missing).toBe('the space for gear')
    expect(verdicts.legal.state).toBe('cannot-tell')
    expect(verdicts.fishes.state).toBe('cannot-tell')
    const muddled = check(standard, { conditions: { ...channel, bottom: undefined } })
    expect(muddled.verdicts.holdsBottom.findings[0]?.missing).toBe('the bottom')
  })
  test('water no deeper than the pot is high', () => {
    const shallow = check(standard, { conditions: { ...channel, depthLowM: 0, depthHighM: 0.2 } })
    expect(shallow.verdicts.holdsBottom.state).toBe('cannot-tell')
    expect(finding(shallow, 'floatShows', 'float:shows')?.what).toBe(
      'Cannot tell: the pot, 0.32 m high, stands in no more than 0.2 m of water.',
    )
  })
  test('without a tide, how deep it gets at high water, so the float may not show', () => {
    const tideless = check(standard, {
      conditions: { ...channel, depthHighM: 8, missingTide: 'the tide at this water' },
    }).verdicts.floatShows
    expect(tideless.state).toBe('cannot-tell')
    expect(tideless.findings[0]?.what).toMatch(/^Shows in .* at the depth given/)
    expect(tideless.findings.find((f) => f.rule === 'float:tide')?.missing).toBe('the tide at this water')
  })
})

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

describe('for any design', () => {
  const water = fc.record({
    surfaceCurrentMps: fc.double({ min: 0, max: 6, noNaN: true }),
    depthLowM: fc.double({ min: 0, max: 400, noNaN: true }),
    range: fc.double({ min: 0, max: 18, noNaN: true }),
    bottom: fc.constantFrom(...bottoms),
    waves: fc.option(
      fc.record({
        heightM: fc.double({ min: 0, max: 8, noNaN: true }),
        periodS: fc.double({ min: 1, max: 25, noNaN: true }),
      }),
      { nil: undefined },
    ),
  })
  const conditionsOf = ({
    range,
    ...rest
  }: { range: number; depthLowM: number } & Omit<
    Conditions,
    'depthHighM' | 'temperatureC' | 'salinityPsu' | 'basis'
  >): Conditions => ({
    ...channel,
    ...rest,
    depthHighM: rest.depthLowM + range,
  })

  test('the check has its published form, finite numbers, and sentences that read', () => {
    fc.assert(
      fc.property(arbitraryPot, water, (pot, sea) => {
        const result = check(pot, { conditions: conditionsOf(sea), trip })
        expect(v.is(CheckSchema, result)).toBe(true)
        for (const { findings, figures, state } of Object.values(result.verdicts)) {
          for (const { what, margin } of findings) {
            expect(what).toMatch(/^[A-Z0-9].*\.$/)
            expect(what).not.toMatch(/NaN|undefined|Infinity|–|!/)
            if (margin !== undefined) expect(Number.isFinite(margin)).toBe(true)
          }
          for (const value of Object.values(figures ?? {}))
            for (const n of typeof value === 'number'
              ? [value]
              : Array.isArray(value)
                ? value
                : Object.values(value))
              expect(Number.isFinite(n)).toBe(true)
          if (state === 'cannot-tell') expect(findings.some((f) => f.missing !== undefined)).toBe(true)
        }
      }),
      { numRuns: 250 },
    )
  }, 60_000)

  test('a heavier ring raises the sliding current, a rope twice as thick lowers it', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...starterPots),
        fc.double({ min: 0.3, max: 1, noNaN: true }),
        (pot, mps) => {
          const sea = { conditions: { ...channel, surfaceCurrentMps: mps } }
          const frame = (pot.frame ?? []).map((m) =>
            m.role === 'base-ring' ? { ...m, barDiameterMm: m.barDiameterMm * 1.4 } : m,
          )
          const now = slides(pot, sea).mid
          expect(slides({ ...pot, frame }, sea).mid).toBeGreaterThan(now)
          const rope = pot.rope && { ...pot.rope, diameterMm: 2 * pot.rope.diameterMm }
          expect(slides({ ...pot, ...(rope && { rope }) }, sea).mid).toBeLessThan(now)
        },
      ),
      { numRuns: 25 },
    )
  }, 60_000)

  test('growth on the netting never helps it to hold', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...starterPots),
        fc.double({ min: 1, max: 2.5, noNaN: true }),
        (pot, foulingFactor) => {
          expect(slides(pot, { wear: { foulingFactor } }).mid).toBeLessThanOrEqual(slides(pot).mid * 1.003)
        },
      ),
      { numRuns: 25 },
    )
  }, 60_000)

  test('the outlooks stay in order: cautious slides first', () => {
    fc.assert(
      fc.property(completePot, (pot) => {
        const { figures } = check(pot).verdicts.holdsBottom
        if (!figures?.['slideCurrentMps']) return
        const { low, mid, high } = slides(pot)
        expect(low).toBeLessThanOrEqual(mid * 1.01 + 1e-6)
        expect(mid).toBeLessThanOrEqual(high * 1.01 + 1e-6)
      }),
      { numRuns: 120 },
    )
  }, 60_000)
})
