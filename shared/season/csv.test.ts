import { foldJournal } from '@shared/journal/fold'
import { mergeJournals } from '@shared/journal/merge'
import type { JournalEvent } from '@shared/schema/journal'
import Papa from 'papaparse'
import { expect, test } from 'vitest'
import { wearAssumptions } from '@shared/wear/assumptions'
import { dueCsv, eventsCsv, partsCsv, shoppingCsv } from './csv'
import { dueList } from './due'
import { lockerLives } from './locker-lives'
import { markDone } from './mark-done'

const nowMs = Date.parse('2026-05-01T00:00:00.000Z')
const at = (day: number) => `2026-04-${String(day).padStart(2, '0')}T08:00:00.000Z`
const part = (id: string) => ({ id, kind: 'rope', material: 'PP', lengthM: 20, installedOn: '2026-04-01' })
const events = [
  {
    kind: 'add-pots',
    at: at(1),
    pots: ['10', '9'].map((number) => ({
      pot: `p${number}`,
      number,
      design: 'd',
      parts: [part(`r${number}`)],
    })),
  },
  { kind: 'set', at: at(2), pot: 'p9', note: '=HYPERLINK("x")' },
  { kind: 'haul', at: at(4), pot: 'p9', kept: 2 },
  { kind: 'inspect', at: at(5), part: 'r9', grade: 2 },
].map((body, i) => ({ version: 1, id: `e${i}`, machine: 'm', seq: i + 1, ...body })) as JournalEvent[]
const state = foldJournal(mergeJournals([events]), nowMs)
const rows = (text: string) =>
  Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true }).data

test('parts stand by number with what they have been through', () => {
  const table = rows(partsCsv(state, nowMs))
  expect(table.map((row) => row['number'])).toEqual(['9', '10'])
  expect(table[0]).toMatchObject({
    part: 'rope',
    hauls: '1',
    daysInWater: '2',
    lastGrade: '2',
    lastInspected: '2026-04-05',
  })
})

test('the history has a line an event, with the number of the pot it is about', () => {
  const table = rows(eventsCsv(events, state))
  expect(table.map((row) => [row['kind'], row['number']])).toEqual([
    ['add-pots', ''],
    ['set', '9'],
    ['haul', '9'],
    ['inspect', '9'],
  ])
  expect(JSON.parse(table[2]?.['said'] ?? '')).toEqual({ pot: 'p9', kept: 2 })
})

test('text that a spreadsheet would run is kept as text', () => {
  const line = {
    item: '=1+1',
    unit: 'm',
    needed: 20.04,
    inHand: 0,
    toBuy: 20.04,
    cost: 9.018,
    unmeasured: 0,
  } as const
  const [row] = rows(shoppingCsv({ lines: [line], total: 9, unpriced: 0 }))
  expect(row).toEqual({
    item: "'=1+1",
    unit: 'm',
    needed: '20',
    inHand: '0',
    toBuy: '20',
    coils: '',
    cost: '9.02',
  })
})

test('done inspections and cleanings are written as what was found and done', () => {
  const common = { pot: 'p9', number: '9', by: '2026-05-01', reason: '' }
  const done = { newPart: 'n', on: '2026-05-01', grade: 3, brokenBars: 1 } as const
  expect(markDone({ ...common, action: 'clean' }, done)).toEqual([{ kind: 'clean', pot: 'p9' }])
  const [state9, pot9] = [state.parts['r9'], state.pots['p9']]
  if (!state9 || !pot9) throw new Error('the pot is gone')
  const life = { decision: 'watch', reason: '', inspected: true } as const
  const use = {
    ageMonths: 1,
    hauls: 1,
    immersedDays: 2,
    ashoreDays: { sun: 0, shade: 0, indoors: 0, unstated: 28 },
  }
  const report = { part: state9, pot: pot9, use, life, belief: { shape: 3, failures: 2, exposure: 9 } }
  expect(markDone({ ...common, action: 'inspect', report }, done)).toEqual([
    { kind: 'inspect', part: 'r9', grade: 3, brokenBars: 1 },
  ])
})

test('what is due stands with its day and its reason, the pot itself where no part is meant', () => {
  const context = { nowMs: Date.parse('2027-06-01T00:00:00.000Z'), sheet: wearAssumptions, aheadMonths: 6 }
  const clean = {
    action: 'clean',
    pot: 'p9',
    number: '9',
    by: '2027-06-01',
    reason: 'Growth, adds drag',
  } as const
  const parts = dueList(state, lockerLives(state, context), context)
  const table = rows(dueCsv([clean, ...parts]))
  expect(table[0]).toEqual({
    by: '2027-06-01',
    do: 'clean',
    number: '9',
    part: 'pot',
    why: 'Growth, adds drag',
  })
  expect(table.slice(1).map((row) => row['part'])).toEqual(parts.map(() => 'rope'))
  expect(parts.length).toBeGreaterThan(0)
})
