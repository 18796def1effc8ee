import type { JournalEvent } from '@shared/schema/journal'
import { expect, test } from 'vitest'
import { foldJournal } from './fold'
import { mergeJournals } from './merge'
import { compareNumbers, moveBeforeSetting, nextExpected, nextToSet, stringOf } from './run'

const numbers = ['1', '2', '3', '10']
const at = (minute: number) =>
  new Date(Date.parse('2026-05-01T06:00:00.000Z') + minute * 60_000).toISOString()
let seq = 0
const write = (minute: number, body: object): JournalEvent => {
  seq += 1
  return { version: 1, id: `r${seq}`, machine: 'boat', seq, at: at(minute), ...body } as JournalEvent
}
const pots = numbers.map((number) => ({ pot: `p${number}`, number, design: 'round', parts: [] }))
const set = numbers.map((number, i) => write(10 + i, { kind: 'set', pot: `p${number}`, run: 'day' }))
const start = [write(0, { kind: 'add-pots', pots }), ...set]
const haul = (number: string, minute: number) => write(minute, { kind: 'haul', pot: `p${number}` })
const after = (...events: JournalEvent[]) => {
  const state = foldJournal(mergeJournals([[...start, ...events]]), Date.parse('2026-05-03T00:00:00.000Z'))
  const run = state.runs['day']
  if (!run) throw new Error('the run is gone')
  return { state, expected: nextExpected(state, run)?.number, missing: state.missing }
}

test('the next float is offered in the order of setting', () => {
  expect(after()).toMatchObject({ expected: '1', missing: [] })
  expect(after(haul('1', 60)).expected).toBe('2')
  expect(after(haul('1', 60), haul('2', 65)).expected).toBe('3')
})

test('a number passed by is flagged until it is hauled, seen or given up', () => {
  const skippedTwo = [haul('1', 60), haul('3', 70)]
  expect(after(...skippedTwo)).toMatchObject({ expected: '10', missing: ['p2'] })
  expect(after(...skippedTwo, haul('10', 75))).toMatchObject({ expected: '2', missing: ['p2'] })
  expect(after(...skippedTwo, write(80, { kind: 'find', pot: 'p2' })).missing).toEqual([])
  expect(after(...skippedTwo, haul('2', 80)).missing).toEqual([])
  const givenUp = after(...skippedTwo, write(80, { kind: 'lose', pot: 'p2' }))
  expect(givenUp.missing).toEqual([])
  expect(givenUp.state.pots['p2']?.status).toBe('lost')
})

test('a float set again where it came up is not one passed over, and the next is still the next', () => {
  const again = (number: string, minute: number) =>
    write(minute, { kind: 'set', pot: `p${number}`, run: 'day' })
  const one = after(haul('1', 60), again('1', 60))
  expect(one).toMatchObject({ expected: '2', missing: [] })
  const two = after(haul('1', 60), again('1', 60), haul('2', 65), again('2', 66))
  expect(two).toMatchObject({ expected: '3', missing: [] })
  const passedThree = after(haul('1', 60), again('1', 60), haul('2', 65), again('2', 66), haul('10', 70))
  expect(passedThree).toMatchObject({ expected: '1', missing: ['p3'] })
  const run = passedThree.state.runs['day']
  expect(run && stringOf(run).map(({ set, haul }) => [set.pot, haul?.at])).toEqual([
    ['p1', at(60)],
    ['p2', at(65)],
    ['p3', undefined],
    ['p10', at(70)],
    ['p1', undefined],
    ['p2', undefined],
  ])
})

test('floats are set by number, 10 after 3', () => {
  const { state } = after(haul('1', 60), haul('10', 61), haul('3', 62))
  expect(['10', '2', '1', '3a'].sort(compareNumbers)).toEqual(['1', '2', '3a', '10'])
  expect(nextToSet(state, state.runs['day'])?.number).toBe('1')
  expect(nextToSet(state, undefined)?.number).toBe('1')
})

test('moving is advised only where most that came up was undersized', () => {
  const entry = (undersized: number, kept: number) => ({
    ...{ pot: 'p1', event: 'x', at: at(0), damage: [] },
    caught: { kept, undersized, female: 0, other: 4 },
  })
  expect(moveBeforeSetting(entry(4, 1))).toBe(true)
  expect(moveBeforeSetting(entry(2, 2))).toBe(false)
  expect(moveBeforeSetting(entry(0, 0))).toBe(false)
})
