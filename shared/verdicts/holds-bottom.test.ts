import { describe, expect, test } from 'vitest'
import { channel, standard, check, slides } from '../../tests/fixtures/checked-pot'
import { massProperties } from '@shared/design/mass-properties'
import { builtInMaterials } from '@shared/design/materials/built-in'
import type { Pot } from '@shared/schema/pot'
import type { Conditions } from '@shared/tides/conditions'

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
    const [slide] = check(standard, {
      locale: { units: 'imperial', decimalMark: ',' },
      conditions: { ...channel, surfaceCurrentMps: 0.8 },
    }).verdicts.holdsBottom.findings
    expect(slide?.what).toMatch(/Slides at 1,\d kn; .* lb heavier/)
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
