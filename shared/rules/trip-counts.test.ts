import { expect, test } from 'vitest'
import { goldenCases } from '../../tests/fixtures/golden'
import { allowance } from './counts'
import { readPacks } from './packs'
import { tripCounts } from './trip-counts'

const packs = readPacks()
function scene(region: string) {
  const pack = packs.get(region)
  const golden = goldenCases.find((one) => one.region === region && one.fails.length === 0)
  if (!pack || !golden) throw new Error(`no pack or golden pot for ${region}`)
  return { pack, ...golden }
}

test('says how many may be set, how many are spare, and what one more person changes', () => {
  const { pack, trip, pot } = scene('US-WA')
  const counts = tripCounts(pack, trip, [pot, pot, pot])
  expect(counts.limits).toMatchObject([
    { inHand: 3, allowed: 4, because: '2 a person', withOneMore: 6, missing: [] },
  ])
  expect(counts.spare).toBe(1)
  expect(counts.illegalPots).toEqual([])
})

test('pools kinds of gear, in hand and carried besides', () => {
  const { pack, trip, pot } = scene('AU-QLD')
  const dilly = { ...pot, id: 'dilly', gearKind: 'dilly' as const }
  const counts = tripCounts(
    pack,
    { ...trip, people: 1, otherGear: [{ gearKind: 'collapsible-trap', count: 2 }] },
    [pot, pot, dilly],
  )
  expect(counts.limits.map((limit) => limit.inHand)).toEqual([5, 5])
  expect(counts.spare).toBe(-1)
})

test('names the pot that makes the trip illegal, and the rule it breaks', () => {
  const { pack, trip, pot } = scene('US-WA')
  const bad = { ...pot, id: 'bad', name: 'Old one', release: { kind: 'none' as const } }
  expect(tripCounts(pack, trip, [pot, bad]).illegalPots).toEqual([
    { potId: 'bad', name: 'Old one', rules: ['US-WA:cord-a'] },
  ])
})

test('without a headcount it says what is missing', () => {
  const { pack, trip, pot } = scene('US-WA')
  const unsaid = { ...trip }
  delete unsaid.people
  expect(tripCounts(pack, unsaid, [pot]).limits[0]).toMatchObject({ missing: ['how many people go'] })
})

const trip = (people: number, more: object = {}) => ({
  format: 'potwright/trip' as const,
  version: 1 as const,
  people,
  boat: true,
  licences: people,
  ...more,
})

test('a step: three alone, six a boat from two people up', () => {
  const limits = [
    { per: 'person' as const, value: 3 },
    { per: 'boat' as const, value: 6, fromPeople: 2 },
  ]
  const allowed = (people: number) => allowance(limits, trip(people))
  expect([1, 2, 3].map(allowed)).toMatchObject([{ allowed: 3 }, { allowed: 6 }, { allowed: 6 }])
})

test('whichever is less, and a boat limit only on a boat', () => {
  const limits = [
    { per: 'licence' as const, value: 1 },
    { per: 'boat' as const, value: 5 },
  ]
  expect(allowance(limits, trip(7))).toMatchObject({ allowed: 5, because: '5 a boat' })
  expect(allowance(limits, trip(7, { boat: false }))).toMatchObject({ allowed: 7 })
  expect(allowance(limits, trip(3))).toMatchObject({ allowed: 3 })
})

test('the highest headcount that is reached applies', () => {
  const limits = [
    { per: 'boat' as const, value: 3 },
    { per: 'boat' as const, value: 6, fromPeople: 2 },
    { per: 'boat' as const, value: 8, fromLicences: 4 },
  ]
  expect([1, 3, 4].map((people) => allowance(limits, trip(people)))).toMatchObject([
    { allowed: 3 },
    { allowed: 6 },
    { allowed: 8 },
  ])
})
