import { expect, test } from 'vitest'
import type { RulePack } from '@shared/schema/rule-pack'
import { gaugeEntries, gaugeVerdict } from './gauge'
import { blankPack } from './own-packs'
import { emptyOwnPack, inUse } from './own-rules'
import { freshSpeciesId, withoutSpecies, withSpecies } from './own-species'
import { readPacks } from './packs'

const base = readPacks().get('US-WA')
const shipped = base?.species.find((one) => one.slug === 'metacarcinus-magister' && one.sizes.length > 0)
if (!base || !shipped) throw new Error('no pack')
const empty = emptyOwnPack(base, '2026-12-03')
const value = <T>(result: { ok: true; value: T } | { ok: false; error: { message: string } }): T => {
  if (!result.ok) throw new Error(result.error.message)
  return result.value
}
const size = (min: number) => ({
  ...shipped,
  sizes: [{ min, unit: 'mm' as const }],
  user: { date: '2026-12-03' },
})
const answer = (pack: RulePack, mm: number) => {
  const entry = gaugeEntries(pack).find(({ species }) => species.id === shipped.id)
  return entry && gaugeVerdict(entry, mm, { sex: 'male' }).state
}

test('a size of the user’s is what the Gauge answers by, and the shipped one comes back when it goes', () => {
  const own = value(withSpecies(empty, size(120)))
  const merged = value(inUse(base, own))
  expect(answer(base, 130)).toBe('return')
  expect(answer(merged, 130)).toBe('keep')
  expect(merged.species).toHaveLength(base.species.length)
  expect(merged.species.find(({ id }) => id === shipped.id)?.user).toEqual({ date: '2026-12-03' })
  expect(answer(value(inUse(base, withoutSpecies(own, shipped.id))), 130)).toBe('return')
})

test('an entry of the user’s cites their source alone, in every part', () => {
  const source = { title: 'Sign at the slip', kind: 'notice' as const, date: '2026-12-03' }
  const merged = value(inUse(base, value(withSpecies(empty, shipped, source))))
  const mine = merged.species.find(({ id }) => id === shipped.id)
  expect(mine?.sources.map((index) => merged.sources[index]?.title)).toEqual([source.title])
  const parts = mine ? [mine.measure, ...mine.sizes, ...mine.bags] : []
  expect(parts.flatMap((part) => part.sources ?? [])).toEqual([])
})

test('an entry is put in place of one with its id, and a new one gets an id that nobody has', () => {
  const twice = value(withSpecies(value(withSpecies(empty, size(120))), size(125)))
  expect(twice.species.map(({ sizes }) => sizes[0]?.min)).toEqual([125])
  const fresh = freshSpeciesId('US-WA', base, twice)
  expect(fresh).toBe('US-WA:own-1')
  const added = value(withSpecies(twice, { ...size(80), id: fresh }))
  expect(freshSpeciesId('US-WA', base, added)).toBe('US-WA:own-2')
})

test('an entry that fits nothing is refused with its path', () => {
  expect(withSpecies(empty, { ...size(120), sizes: [{ min: -3, unit: 'mm' }] })).toMatchObject({
    ok: false,
    error: { path: 'species.0.sizes.0.min' },
  })
  const seasons = [{ from: '02-30', to: '04-01' }]
  expect(withSpecies(empty, { ...size(120), seasons })).toMatchObject({
    ok: false,
    error: { path: 'species.0.seasons.0.from' },
  })
})

test('a region with digits in its code takes species too', () => {
  const head = { region: 'FR-29', name: 'Heron Bay', authority: 'Harbour office', today: '2026-12-03' }
  const blank = value(blankPack(head))
  const bare = { ...size(120), id: freshSpeciesId('FR-29', blank), bags: [] }
  delete bare.zones
  expect(value(withSpecies(blank, bare)).species[0]?.id).toBe('FR-29:own-1')
})
