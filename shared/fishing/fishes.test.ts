import type { Pot } from '@shared/schema/pot'
import type { UnitSystem } from '@shared/units/locale'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { fishes, type FishesInput } from './fishes'
import { floatClearance } from './spacing'
import { fishingAssumptions } from './assumptions'
import { gapCurve } from './gap-curve'
import { speciesBySlug } from './species'
import { harmIfLost } from './ghost'
import { entranceFit } from './entrances'
import { haulPoint } from './haul-point'
import { retention, sizeRetained } from './selectivity'
import { soakCurve, soakMarks } from './soak-curve'

const pot: Pot = {
  ...{ format: 'potwright/pot', version: 1, id: 'p', name: 'Round', gearKind: 'pot' },
  body: { shape: 'round', baseDiameterMm: 900, topDiameterMm: 900, heightMm: 320, folds: true, feet: 0 },
  entrances: [0, 180].map((bearingDeg) => ({
    kind: 'funnel',
    widthMm: 300,
    heightMm: 130,
    bearingDeg,
    sillMm: 30,
  })),
  bait: { holder: 'mesh-bag', massKg: 0.5, at: 'centre', heightMm: 60 },
  escapeGaps: [{ shape: 'circle', diameterMm: 108, count: 2, bottomEdgeMm: 190 }],
  bridle: { legs: 2, bearingDeg: 90, attach: 'top-ring' },
}
const dungeness = { species: 'metacarcinus-magister', measure: 'inside-points', sizeMm: 158.75 } as const
const mudCrab = { species: 'scylla-serrata', measure: 'length', sizeMm: 85 } as const
const trip = (soakH: number) => ({ format: 'potwright/trip', version: 1, soakH }) as const
const input: FishesInput = { pot, trip: trip(3), legalSizes: [dungeness], landing: 'holds' }
const state = (rule: string, change: Partial<FishesInput> = {}) =>
  fishes({ ...input, ...change }).findings.find((finding) => finding.rule.startsWith(rule))?.state

test('a sound pot on a short soak holds in everything', () => {
  const verdict = fishes(input)
  expect(verdict.findings.filter((finding) => finding.state !== 'holds')).toEqual([])
  expect(verdict.state).toBe('holds')
})

test('what is not known cannot be told, and is named', () => {
  const bare = Object.fromEntries(
    Object.entries(pot).filter(([part]) => !['bait', 'escapeGaps', 'bridle'].includes(part)),
  ) as Pot
  const verdict = fishes({ pot: bare })
  expect(verdict.state).toBe('cannot-tell')
  expect(verdict.findings.map((finding) => finding.missing)).toEqual([
    'the bait and its holder',
    'where the bait hangs',
    'the crab sought and its least legal size',
    'where the rope is tied',
    'how the pot lands',
  ])
  expect(verdict.figures).toEqual({})
})

test('bait lasts the soak or not, and a basket outlasts a bag and a clip', () => {
  const held = (holder: 'clip' | 'mesh-bag' | 'wire-basket', soakH: number) =>
    state('fishes:bait-outlasts', {
      trip: trip(soakH),
      pot: { ...pot, bait: { holder, massKg: 0.5, at: 'centre', heightMm: 60 } },
    })
  expect([
    held('clip', 12),
    held('mesh-bag', 12),
    held('mesh-bag', 3),
    held('wire-basket', 20),
    held('mesh-bag', 20),
  ]).toEqual([...['fails', 'close', 'holds', 'close', 'fails']])
  const figures = fishes({ ...input, trip: trip(12) }).figures
  expect(figures?.['baitLeftAtEnd']).toMatchObject({ mid: expect.closeTo(0.139, 2) as number })
})

test('an entrance too low for a legal crab blocks it; a low one is tight', () => {
  const low = (heightMm: number) =>
    ({ ...pot, entrances: pot.entrances?.map((entrance) => ({ ...entrance, heightMm })) }) as Pot
  expect(
    [40, 60, 90].map((height) => state('fishes:entrance', { pot: low(height), legalSizes: [mudCrab] })),
  ).toEqual(['fails', 'close', 'holds'])
  expect(state('fishes:entrance', { pot: low(70) })).toBe('cannot-tell')
  expect(entranceFit({ heightMm: 70, widthMm: 300 }, { depthMm: 33, lengthMm: 61 })).toBe('ok')
})

test('the gap in use for mud crab suits its legal length; a low one shuts undersized crabs in, a high one loses legal ones', () => {
  const gap = (heightMm: number) =>
    ({
      ...pot,
      escapeGaps: [{ shape: 'rectangle', widthMm: 120, heightMm, count: 2, bottomEdgeMm: 20 }],
    }) as Pot
  const both = (heightMm: number) =>
    ['fishes:undersized', 'fishes:legal-stays'].map((rule) =>
      state(rule, { pot: gap(heightMm), legalSizes: [mudCrab] }),
    )
  expect(both(46)).toEqual(['holds', 'holds'])
  expect(both(30)).toEqual(['fails', 'holds'])
  expect(both(60)).toEqual(['holds', 'fails'])
  expect(state('fishes:undersized', { pot: { ...pot, escapeGaps: [] } })).toBe('fails')
})

test('the haul point is clear between entrances and not over one', () => {
  const at = (bearingDeg: number) => ({ ...pot, bridle: { legs: 2, bearingDeg, attach: 'top-ring' } }) as Pot
  expect([90, 30, 10, 359].map((bearing) => state('fishes:haul', { pot: at(bearing) }))).toEqual([
    'holds',
    'close',
    'fails',
    'fails',
  ])
  expect(haulPoint(at(10))).toMatchObject({ nearest: 0, betterBearingDeg: 90 })
  expect(haulPoint({ ...pot, bridle: { legs: 4, bearingDeg: 0, attach: 'top-ring' } })).toBeUndefined()
})

test('open gear is asked only about its bait and how it lands', () => {
  const verdict = fishes({ ...input, pot: { ...pot, gearKind: 'hoop-net' } })
  expect(verdict.findings.map((finding) => finding.rule)).toEqual([
    'fishes:bait-outlasts-soak',
    'fishes:base-down',
  ])
  expect(verdict.figures?.['bestSoakH']).toMatchObject({ low: 0.25, high: 0.5 })
})

test.each(['holds', 'close', 'fails'] as const)(
  'a pot that lands base down or not: %s is said as it is',
  (landing) => {
    expect(state('fishes:base-down', { landing })).toBe(landing)
  },
)

test('a soak curve never exceeds a full pot, and leaking entrances bring the best soak earlier', () => {
  const rate = fc.double({ min: 0.01, max: 0.5, noNaN: true })
  fc.assert(
    fc.property(
      rate,
      rate,
      fc.double({ min: 0.002, max: 0.03, noNaN: true }),
      (drawPerH, decayPerH, escapePerH) => {
        const curve = soakCurve({ drawPerH, decayPerH, escapePerH }, 72)
        expect(curve.share.every((n) => n >= 0 && n <= 1)).toBe(true)
        const leakier = soakCurve({ drawPerH, decayPerH, escapePerH: escapePerH * 2 }, 72)
        expect(soakMarks(leakier).peakH).toBeLessThanOrEqual(soakMarks(curve).peakH)
      },
    ),
    { numRuns: 40 },
  )
})

test('selection is half at its middle and its quarters are a selection range apart', () => {
  expect(retention(100, 100, 8)).toBe(0.5)
  expect(sizeRetained(0.75, 100, 8) - sizeRetained(0.25, 100, 8)).toBeCloseTo(8, 10)
  expect(retention(sizeRetained(0.9, 100, 8), 100, 8)).toBeCloseTo(0.9, 10)
})

test('a release cord spares most of the harm of a lost pot; swinging floats need room', () => {
  expect(harmIfLost(126).shareOfNoCord).toBeCloseTo(0.157, 3)
  expect(harmIfLost().shareOfNoCord).toBe(1)
  expect(floatClearance(30, 18)).toBe(-6)
})

test('the share kept by a gap rises with size, and even the smallest do not all try it', () => {
  const species = speciesBySlug('scylla-serrata')
  const gap = { shape: 'rectangle', widthMm: 120, heightMm: 46, count: 2, bottomEdgeMm: 20 } as const
  const curve = (species && gapCurve(gap, mudCrab, species, fishingAssumptions)) ?? []
  const kept = curve.map((point) => point.kept.mid)
  expect(kept.every((share, i) => i === 0 || share > (kept[i - 1] ?? 1))).toBe(true)
  expect(kept[0]).toBeCloseTo(0.1, 2)
  expect(kept.at(-1)).toBeCloseTo(1, 2)
  expect(curve.every(({ kept: { low, mid, high } }) => low < mid && mid < high)).toBe(true)
})

const found = (rule: string, change: Partial<FishesInput>) =>
  fishes({ ...input, ...change }).findings.find((finding) => finding.rule.startsWith(rule))

test('of a crab whose proportions are not kept nothing is told, and it is named', () => {
  const unknown = { species: 'ovalipes-catharus', measure: 'length', sizeMm: 60 } as const
  for (const rule of ['fishes:undersized', 'fishes:entrance']) {
    const named = found(rule, { legalSizes: [{ ...unknown, name: 'paddle crab' }] })
    expect(named).toMatchObject({ state: 'cannot-tell', missing: 'the body proportions of paddle crab' })
    expect(found(rule, { legalSizes: [unknown] })?.missing).toContain('ovalipes-catharus')
  }
})

test('a ring for a crab known by its depth, or a slot for one known by rings, cannot be told', () => {
  const slot = { shape: 'rectangle', widthMm: 120, heightMm: 46, count: 2, bottomEdgeMm: 20 } as const
  const missing = (change: Partial<FishesInput>) => found('fishes:undersized', change)?.missing
  expect(missing({ legalSizes: [mudCrab] })).toBe('the proportions of mud crab for this kind of gap')
  expect(missing({ pot: { ...pot, escapeGaps: [slot] } })).toBe(
    'the proportions of Dungeness crab for this kind of gap',
  )
  // The same ring cannot be told for a size taken in another way.
  const length = { species: 'callinectes-sapidus', measure: 'length', sizeMm: 50 } as const
  expect(missing({ legalSizes: [length] })).toContain('blue crab')
})

test('without a gap undersized crabs stay in, and a height is advised where the depth of the crab is known', () => {
  const none = { ...pot, escapeGaps: [] }
  const of = (legal: NonNullable<FishesInput['legalSizes']>[number]) =>
    found('fishes:undersized', { pot: none, legalSizes: [legal] })?.what
  // 0.95 of 0.54 of 85 mm.
  expect(of(mudCrab)).toContain('43.6 mm high')
  expect(of(dungeness)).not.toContain('mm high')
})

test('of several gaps the one that keeps most governs', () => {
  const ring = (diameterMm: number) => ({ shape: 'circle', diameterMm, count: 1, bottomEdgeMm: 190 }) as const
  const actual = (...sizes: number[]) =>
    found('fishes:undersized', { pot: { ...pot, escapeGaps: sizes.map(ring) } })?.actual
  expect(actual(100, 108)).toBeCloseTo(1.35 * 108, 9)
  expect(actual(108, 100)).toBeCloseTo(1.35 * 108, 9)
})

test('entrances left out cannot be told, a pot without one fails, and a bound on the depth decides nothing', () => {
  const { entrances, ...rest } = pot
  expect(found('fishes:entrance', { pot: rest })?.missing).toBe('the entrances')
  expect(found('fishes:entrance', { pot: { ...pot, entrances: [] } })).toMatchObject({
    state: 'fails',
    what: 'The pot has no entrance.',
  })
  const low = (heightMm: number, widthMm = 300) => ({
    pot: { ...pot, entrances: (entrances ?? []).map((entrance) => ({ ...entrance, heightMm, widthMm })) },
  })
  // A Dungeness crab of 158.75 mm is about 103 mm long; how deep is not kept, only that it is no deeper.
  expect(found('fishes:entrance', low(60))?.missing).toBe('the depth of the shell of Dungeness crab')
  expect(found('fishes:entrance', low(60, 80))?.state).toBe('fails')
  expect(found('fishes:entrance', low(130))?.what).toContain('recalled and not checked')
  // The depth of a brown crab goes by its width: 0.34 of 150 mm is 51 mm.
  const brown = { species: 'cancer-pagurus', measure: 'greatest-width', sizeMm: 150 } as const
  const brownAt = (heightMm: number) => found('fishes:entrance', { ...low(heightMm), legalSizes: [brown] })
  expect([brownAt(40), brownAt(53), brownAt(90)].map((finding) => finding?.state)).toEqual([
    'fails',
    'close',
    'holds',
  ])
})

test('a box hauls by an edge between its entrances; a pot that hangs level, or opens on top only, by none', () => {
  const box: Pot = {
    ...pot,
    body: { shape: 'box', lengthMm: 900, widthMm: 600, heightMm: 320, folds: false, feet: 0 },
  }
  // Half of 300 mm in a wall 300 mm away.
  expect(haulPoint(box)?.clearDeg).toBeCloseTo(90 - (Math.atan(0.5) * 180) / Math.PI, 9)
  expect(haulPoint({ ...box, bridle: { legs: 2, bearingDeg: 90, attach: 'top-centre' } })).toBeUndefined()
  const { bridle, entrances, ...bare } = box
  expect(haulPoint({ ...bare, ...(entrances && { entrances }) })).toBeUndefined()
  expect(haulPoint({ ...bare, ...(bridle && { bridle }) })).toBeUndefined()
  const onTop = (entrances ?? []).map((entrance) => ({ ...entrance, onTop: true }))
  expect(haulPoint({ ...box, entrances: onTop })).toBeUndefined()
})

test('sizes are said in the reader’s units', () => {
  const said = (units: UnitSystem) =>
    fishes({ ...input, legalSizes: [dungeness], locale: { units, decimalMark: ',' } })
      .findings.map((finding) => finding.what)
      .join(' ')
  expect(said('metric')).toMatch(/crab of 159 mm walks in.* crabs of 146 mm \(140 to 150\)/)
  expect(said('imperial')).toMatch(/crab of 6,25 in walks in.* crabs of 5,74 in \(5,53 to 5,91\)/)
  expect(said('imperial')).not.toMatch(/\bmm\b/)
})

test('an entrance too narrow is measured by its width, one too low by its height', () => {
  const through = (widthMm: number, heightMm: number) => {
    const entrances = (pot.entrances ?? []).map((entrance) => ({ ...entrance, widthMm, heightMm }))
    return fishes({ ...input, pot: { ...pot, entrances }, legalSizes: [mudCrab] }).findings.find((finding) =>
      finding.rule.startsWith('fishes:entrance-fit'),
    )
  }
  expect(through(60, 130)).toMatchObject({ state: 'fails', actual: 60, limit: 85, margin: -25 })
  expect(through(300, 30)).toMatchObject({ state: 'fails', actual: 30 })
  expect(through(300, 30)?.margin).toBeLessThan(0)
})
