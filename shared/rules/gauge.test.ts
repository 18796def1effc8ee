import { expect, test } from 'vitest'
import { gaugeEntries, gaugeVerdict, type GaugeEntry } from './gauge'
import { readPacks } from './packs'

const packs = readPacks()
function entry(region: string, id: string, where: { zone?: string; date?: string } = {}): GaugeEntry {
  const pack = packs.get(region)
  const found = pack && gaugeEntries(pack, where).find((one) => one.species.id === id)
  if (!found) throw new Error(`no entry ${id}`)
  return found
}

test('a crab is kept, returned, or measured again within a millimetre of the limit', () => {
  const dungeness = entry('US-WA', 'US-WA:sp-dungeness-ps', { zone: 'puget-sound' })
  const at = (mm: number) => gaugeVerdict(dungeness, mm, { sex: 'male' }).state
  // 6 1/4 in is 158.75 mm.
  expect([157.7, 157.8, 159.7, 159.8].map(at)).toEqual(['return', 'measure-again', 'measure-again', 'keep'])
})

test('sex decides before size, and a large crab of unknown sex cannot be told where one sex goes back', () => {
  const dungeness = entry('US-WA', 'US-WA:sp-dungeness-ps')
  expect(gaugeVerdict(dungeness, 200, { sex: 'female' }).state).toBe('return')
  expect(gaugeVerdict(dungeness, 200, { sex: 'male', softShell: true }).state).toBe('return')
  expect(gaugeVerdict(dungeness, 200).state).toBe('cannot-tell')
  expect(gaugeVerdict(dungeness, 100).state).toBe('return')
})

test('either sex is kept where both may be, but not with eggs where no rule was found', () => {
  const rock = entry('US-WA', 'US-WA:sp-redrock')
  expect(gaugeVerdict(rock, 140).state).toBe('keep')
  expect(gaugeVerdict(rock, 140, { sex: 'female', eggBearing: true }).state).toBe('cannot-tell')
})

test('the zone and the date pick the entry and its sizes', () => {
  const wa = packs.get('US-WA')
  const md = packs.get('US-MD')
  if (!wa || !md) throw new Error('no pack')
  expect(gaugeEntries(wa, { zone: 'coast' }).map((one) => one.species.id)).toEqual([
    'US-WA:sp-dungeness-coast',
    'US-WA:sp-redrock',
  ])
  const peeler = (date: string) =>
    entry('US-MD', 'US-MD:sp-atl-peeler', { date }).sizes.map((size) => size.min)
  expect([peeler('2026-07-14'), peeler('2026-07-15')]).toEqual([[3.25], [3.5]])
  expect(
    gaugeEntries(md, { zone: 'chesapeake-bay', date: '2026-07-15' }).map((one) => one.species.id),
  ).toEqual(['US-MD:sp-hard-late'])
})

test('a size by sex cannot be told without the sex; one without a limit is not called free', () => {
  const hard = entry('US-MD', 'US-MD:sp-atl-hard')
  expect(gaugeVerdict(hard, 140).state).toBe('cannot-tell')
  expect(gaugeVerdict(hard, 140, { sex: 'male' }).state).toBe('keep')
  expect(gaugeVerdict(hard, 140, { sex: 'female' })).toMatchObject({ state: 'cannot-tell' })
})
