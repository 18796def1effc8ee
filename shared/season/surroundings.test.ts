import { builtInMaterials } from '@shared/design/materials/built-in'
import { starterPots } from '@shared/design/starter-pots'
import { foldJournal } from '@shared/journal/fold'
import { mergeJournals } from '@shared/journal/merge'
import { defaultCoefficients } from '@shared/physics/coefficients'
import { readPacks } from '@shared/rules/packs'
import type { JournalEvent } from '@shared/schema/journal'
import type { Pot } from '@shared/schema/pot'
import type { Water } from '@shared/schema/water'
import { wearAssumptions } from '@shared/wear/assumptions'
import { expect, test } from 'vitest'
import { lockerLives } from './locker-lives'
import { ropeNeed, shareOf } from './rope-share'
import { surroundingsOf } from './surroundings'

const packs = readPacks()
const [, standard, heavy] = starterPots
if (!standard || !heavy) throw new Error('starting shapes are missing')
const nowMs = Date.parse('2026-05-01T00:00:00.000Z')
const water = (id: string, more: Partial<Water> = {}): Water => ({
  ...{ format: 'potwright/water', version: 1, id, name: id, depthM: 6 },
  ...more,
})
const need = (pot: Pot) => ropeNeed(pot, builtInMaterials, defaultCoefficients)?.share ?? NaN

test('a rope must keep what the haul of its design asks: DF·F/(knot·break load)', () => {
  // A thicker rope of the same twine needs less of its strength, a heavier pot more.
  const thicker = standard.rope && { ...standard, rope: { ...standard.rope, diameterMm: 12 } }
  expect(need(standard)).toBeGreaterThan(0.1)
  expect(need(standard)).toBeLessThan(1)
  expect(thicker && need(thicker)).toBeLessThan(need(standard))
  expect(need({ ...standard, measuredMassKg: 40 })).toBeGreaterThan(need(standard))
  const { rope, ...ropeless } = standard
  expect(rope?.diameterMm).toBe(8)
  expect(ropeNeed(ropeless, builtInMaterials, defaultCoefficients)).toBeUndefined()
  expect(shareOf({ share: 0.4, diameterMm: 8 }, { diameterMm: 8 })).toBeCloseTo(0.4, 10)
  expect(shareOf({ share: 0.4, diameterMm: 8 }, { diameterMm: 16 })).toBeCloseTo(0.1, 10)
})

const locker = (waterId: string | undefined, found: object) => {
  const event = (n: number, body: object) =>
    ({
      ...{ version: 1, id: `s${n}`, machine: 'shed', seq: n, at: `2026-04-0${n}T08:00:00.000Z` },
      ...body,
    }) as JournalEvent
  const parts = [
    { id: 'rope', kind: 'rope', material: 'PES', diameterMm: 8, installedOn: '2026-03-01' },
    { id: 'net', kind: 'netting', material: 'PE', barLengthMm: 28, installedOn: '2026-03-01' },
  ]
  const events = [
    event(1, { kind: 'add-pots', pots: [{ pot: 'a', number: '1', design: 'd', parts }] }),
    event(2, { kind: 'set', pot: 'a', ...(waterId === undefined ? {} : { water: waterId }) }),
    event(3, { kind: 'haul', pot: 'a' }),
    event(4, { kind: 'inspect', ...found }),
  ]
  return foldJournal(mergeJournals([events]), nowMs)
}
const reportOf = (kind: string, waterId: string | undefined, found: object, design: Pot = standard) => {
  const around = surroundingsOf({
    designs: [{ ...design, id: 'd' }],
    waters: [water('creek', { region: 'AU-QLD' }), water('nowhere')],
    trip: { format: 'potwright/trip', version: 1, region: 'AU-QLD', species: ['scylla-serrata'] },
    rules: (region) => packs.get(region),
    materials: builtInMaterials,
    coefficients: defaultCoefficients,
  })
  const context = { nowMs, sheet: wearAssumptions, aheadMonths: 6, around }
  const report = lockerLives(locker(waterId, found), context).find(({ part }) => part.part.kind === kind)
  if (!report) throw new Error('the part is gone')
  return report
}

test('broken bars are mended one before a legal crab of the region gets out of that mesh', () => {
  // Queensland mud crab, 150 mm wide: shell 102 by 55 mm, girth 252 mm, out through 3 bars of 28 mm.
  const report = reportOf('netting', 'creek', { part: 'net', brokenBars: 2 })
  expect(report.mendAt).toMatchObject({ bars: 2, letOutAt: 3 })
  expect(report.life).toMatchObject({ decision: 'replace' })
  expect(report.life.reason).toMatch(
    /^2 broken bars in a row. Mend or replace: a legal .*mud crab gets out through 3.$/,
  )
  expect(reportOf('netting', 'creek', { part: 'net', brokenBars: 1 }).life.decision).toBe('watch')
})

test('a pot set where no region is known takes the crab of the trip', () => {
  expect(reportOf('netting', 'nowhere', { part: 'net', brokenBars: 0 }).mendAt).toMatchObject({ letOutAt: 3 })
})

test('one rope is fine on a light pot and worn out on a heavy one', () => {
  const found = { part: 'rope', grade: 2 }
  const light = reportOf('rope', 'creek', found)
  const laden = reportOf('rope', 'creek', found, { ...standard, measuredMassKg: 30 })
  expect(light.life.decision).toBe('fine')
  expect(laden.life.decision).toBe('replace')
  expect(laden.life.reason).toMatch(/strength, which the haul asks for, is left/)
  expect(laden.life.remainingMonths?.mid).toBeLessThan(light.life.remainingMonths?.mid ?? 0)
})

test('a rope found stiff or powdery is watched even where its haul asks little', () => {
  const light = { ...standard, measuredMassKg: 4 }
  expect(reportOf('rope', 'creek', { part: 'rope', grade: 3 }, light).life).toMatchObject({
    decision: 'watch',
  })
})

test('a rope too weak for its pot when new is told as such', () => {
  const { life } = reportOf('rope', 'creek', { part: 'rope', grade: 0 }, { ...heavy, measuredMassKg: 60 })
  expect(life).toMatchObject({ decision: 'replace' })
  expect(life.reason).toMatch(/Even new it is too weak/)
})
