import type { JournalEvent } from '@shared/schema/journal'
import { expect, test } from 'vitest'
import { exposureAt } from './exposure'
import { foldJournal } from './fold'
import { historyOf } from './history'
import { mergeJournals } from './merge'
import { withLatestRuns } from './view'

const nowMs = Date.parse('2026-06-01T00:00:00.000Z')
const day = (n: number, hour = 8) =>
  new Date(Date.parse('2026-01-01T00:00:00.000Z') + (n * 24 + hour) * 3_600_000).toISOString()
let seq = 0
const on = (n: number, body: object): JournalEvent => {
  seq += 1
  return { version: 1, id: `g${seq}`, machine: 'shed', seq, at: day(n), ...body } as JournalEvent
}
const rope = { id: 'rope', kind: 'rope', installedOn: '2025-12-22' }
const add = on(0, {
  kind: 'add-pots',
  pots: [
    { pot: 'a', number: '1', design: 'd', parts: [rope] },
    { pot: 'b', number: '2', design: 'd', parts: [] },
  ],
})
const fold = (...events: JournalEvent[]) => foldJournal(mergeJournals([[add, ...events]]), nowMs)

test('days ashore count by how the pot was kept, those before it was written down as unstated', () => {
  const state = fold(
    on(10, { kind: 'store', pot: 'a', where: 'sun' }),
    on(20, { kind: 'store', pot: 'a', where: 'indoors' }),
  )
  const [part, pot] = [state.parts['rope'], state.pots['a']]
  const use = part && pot && exposureAt(part, pot, Date.parse(day(50)))
  expect(use?.ashoreDays.sun).toBeCloseTo(10, 10)
  expect(use?.ashoreDays.indoors).toBeCloseTo(30, 10)
  expect(use?.ashoreDays.unstated).toBeCloseTo(10 + 10 + 8 / 24, 10)
})

test('a part that was taken off ages no more and keeps what it has been through', () => {
  const state = fold(
    on(1, { kind: 'set', pot: 'a' }),
    on(3, { kind: 'haul', pot: 'a' }),
    on(5, {
      kind: 'replace',
      part: 'rope',
      with: { id: 'new', kind: 'rope', installedOn: '2026-01-06' },
      reason: 'failed',
    }),
    on(6, { kind: 'set', pot: 'a' }),
  )
  const [old, fresh, pot] = [state.parts['rope'], state.parts['new'], state.pots['a']]
  if (!old || !fresh || !pot) throw new Error('parts are missing')
  expect(old.status).toBe('failed')
  expect(exposureAt(old, pot, nowMs)).toMatchObject({ hauls: 1, immersedDays: 2 })
  expect(exposureAt(old, pot, nowMs).ageMonths).toBeCloseTo(0.5, 1)
  expect(exposureAt(fresh, pot, Date.parse(day(16)))).toMatchObject({ hauls: 0, immersedDays: 10 })
})

test('growth is counted until a pot dries for two days or is cleaned', () => {
  const stay = (from: number, to: number) => [
    on(from, { kind: 'set', pot: 'a' }),
    on(to, { kind: 'haul', pot: 'a' }),
  ]
  expect(fold(...stay(1, 10), ...stay(11, 20)).pots['a']?.wetDays).toBe(18)
  expect(fold(...stay(1, 10), ...stay(13, 20)).pots['a']?.wetDays).toBe(7)
  expect(fold(...stay(1, 10), on(10, { kind: 'clean', pot: 'a' }), ...stay(11, 20)).pots['a']?.wetDays).toBe(
    9,
  )
})

test('stock is counted and used up, the latest price holds, photos stay with their pot', () => {
  const state = fold(
    on(1, { kind: 'stock', item: 'rope-pp-8mm', counted: 50 }),
    on(2, { kind: 'stock', item: 'rope-pp-8mm', change: -18 }),
    on(2, { kind: 'stock', item: 'floats', change: 3 }),
    on(3, { kind: 'price', item: 'rope-pp-8mm', each: 0.5, per: 'metre' }),
    on(4, {
      kind: 'price',
      item: 'rope-pp-8mm',
      each: 45,
      per: 'coil',
      coilM: 100,
      on: '2026-01-04',
      supplierNote: 'harbour',
    }),
    on(5, { kind: 'photo', pot: 'a', part: 'rope', file: 'x.jpg', caption: 'fuzz' }),
  )
  expect(state.stock).toEqual({ 'rope-pp-8mm': 32, floats: 3 })
  expect(state.prices['rope-pp-8mm']).toMatchObject({
    each: 45,
    per: 'coil',
    coilM: 100,
    supplierNote: 'harbour',
  })
  expect(state.pots['a']?.photos).toMatchObject([{ file: 'x.jpg', part: 'rope', caption: 'fuzz' }])
})

test('a lost pot lies in the water until found, a retired one takes its parts along, and neither is doubled', () => {
  const found = fold(
    on(1, { kind: 'set', pot: 'a' }),
    on(2, { kind: 'lose', pot: 'a' }),
    on(9, { kind: 'find', pot: 'a' }),
  )
  expect(found.pots['a']).toMatchObject({ status: 'ashore', been: { immersedDays: 8 } })
  const retired = fold(
    on(2, { kind: 'retire', pot: 'a' }),
    on(3, { kind: 'set', pot: 'a' }),
    on(4, { kind: 'inspect', part: 'rope', grade: 1 }),
  )
  expect(retired.parts['rope']?.status).toBe('retired')
  expect(retired.problems.map((problem) => problem.code)).toEqual(['retired-pot', 'unknown-part'])
  const twice = fold(
    on(1, {
      kind: 'add-pots',
      pots: [
        { pot: 'a', number: '9', design: 'd', parts: [] },
        { pot: 'c', number: '3', design: 'd', parts: [rope] },
      ],
    }),
  )
  expect(twice.problems.map((problem) => problem.code)).toEqual(['part-twice', 'pot-twice'])
  expect(twice.pots['c']?.parts).toEqual([])
})

test('a mended net counts as mended, and a swap takes only to a pot in use', () => {
  const state = fold(
    on(1, { kind: 'repair', part: 'rope', what: 'spliced' }),
    on(2, { kind: 'swap-part', part: 'rope', to: 'nowhere' }),
    on(3, { kind: 'photo', pot: 'nowhere', file: 'x.jpg' }),
  )
  expect(state.parts['rope']?.inspections).toMatchObject([{ brokenBars: 0, note: 'spliced' }])
  expect(state.problems.map((problem) => problem.code)).toEqual(['unknown-pot', 'unknown-pot'])
})

test('the history of a pot has what was done to it and to its parts, newest first', () => {
  const set = on(1, { kind: 'set', pot: 'a' })
  const look = on(2, { kind: 'inspect', part: 'rope', grade: 1 })
  const other = on(3, { kind: 'set', pot: 'b' })
  const fix = on(4, { kind: 'correct', target: look.id, fields: { grade: 2 } })
  const undo = on(5, { kind: 'undo', target: set.id })
  const { events } = mergeJournals([[add, set, look, other, fix, undo]])
  const lines = historyOf(events, { pot: 'a', limit: 10 })
  expect(lines.map(({ event, undone, corrected }) => [event.kind, undone, corrected])).toEqual([
    ['inspect', false, true],
    ['set', true, false],
    ['add-pots', false, false],
  ])
  expect(historyOf(events, { limit: 2 }).map(({ event }) => event.kind)).toEqual(['undo', 'correct'])
})

test('only the latest runs come along, and any that still has a pot down', () => {
  const runs = [1, 2, 3].flatMap((n) => [
    on(n * 10, { kind: 'set', pot: 'b', run: `r${n}` }),
    on(n * 10 + 1, { kind: 'haul', pot: 'b' }),
  ])
  const state = fold(on(5, { kind: 'set', pot: 'a', run: 'r0' }), ...runs)
  expect(Object.keys(withLatestRuns(state, 1).runs).sort()).toEqual(['r0', 'r3'])
})
