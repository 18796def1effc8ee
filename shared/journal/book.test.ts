import type { EventDraft, JournalEvent } from '@shared/schema/journal'
import fc from 'fast-check'
import { expect, test } from 'vitest'
import { JournalBook } from './book'
import { foldJournal } from './fold'
import { mergeJournals } from './merge'

const nowMs = Date.parse('2026-06-01T00:00:00.000Z')
const at = (hour: number) => new Date(Date.parse('2026-01-01T00:00:00.000Z') + hour * 3_600_000).toISOString()
const written = (n: number, hour: number, draft: object, machine = 'boat') =>
  ({ version: 1, id: `b${n}`, machine, seq: n + 1, at: at(hour), ...draft }) as JournalEvent
const pots = ['1', '2'].map((number) => ({
  ...{ pot: `p${number}`, number, design: 'round' },
  parts: [{ id: `r${number}`, kind: 'rope', installedOn: '2026-01-01' }],
}))
const start = written(0, 0, { kind: 'add-pots', pots })

test('adding to an open book comes to the same as folding it all', () => {
  const pot = fc.constantFrom('p1', 'p2')
  const machine = fc.constantFrom('boat', 'shed')
  const draft = fc.oneof(
    fc.record({ kind: fc.constantFrom('set', 'haul', 'clean', 'lose', 'find', 'retire'), pot }),
    fc.record({
      kind: fc.constant('inspect'),
      part: fc.constantFrom('r1', 'r2', 'rx'),
      grade: fc.constantFrom(0, 3),
    }),
    fc.record({ kind: fc.constant('undo'), target: fc.nat(12).map((n) => `b${n}`) }),
  )
  fc.assert(
    fc.property(fc.array(fc.tuple(draft, fc.nat(200), machine), { maxLength: 12 }), (drafts) => {
      const events = drafts.map(([body, hour, from], i) => written(i + 1, hour, body, from))
      const book = new JournalBook([[start]], nowMs)
      for (const event of events) book.add([event], nowMs)
      const whole = mergeJournals([[start, ...events]])
      expect(book.state).toEqual(foldJournal(whole, nowMs))
      expect(book.events).toEqual(whole.events)
    }),
    { numRuns: 200 },
  )
})

test('says what speaks against an event before it is written, several tried in turn', () => {
  const book = new JournalBook([[start]], nowMs)
  const code = (...drafts: EventDraft[]) => {
    const found = book.objection(drafts, nowMs)
    return found && [found.index, found.code]
  }
  expect(code({ kind: 'haul', pot: 'p1' })).toEqual([0, 'haul-not-set'])
  expect(code({ kind: 'set', pot: 'p1' }, { kind: 'haul', pot: 'p1' })).toBeUndefined()
  expect(code({ kind: 'set', pot: 'p1' }, { kind: 'haul', pot: 'p2' })).toEqual([1, 'haul-not-set'])
  expect(code({ kind: 'set', pot: 'p1', at: '2027-01-01T00:00:00.000Z' })).toEqual([0, 'in-the-future'])
  expect(code({ kind: 'undo', target: 'nothing' })).toEqual([0, 'unknown-target'])
  expect(code({ kind: 'undo', target: 'b0' })).toBeUndefined()
  expect(code({ kind: 'correct', target: 'b0', fields: { pots: [] } })).toEqual([0, 'bad-correction'])
  expect(book.state.pots['p1']?.status).toBe('ashore')
})

test('work of an earlier day is tried where it would stand', () => {
  const haul = written(2, 60, { kind: 'haul', pot: 'p1' })
  const book = new JournalBook([[start, written(1, 50, { kind: 'set', pot: 'p1' }), haul]], nowMs)
  const code = (...drafts: EventDraft[]) => book.objection(drafts, nowMs)?.code
  expect(code({ kind: 'haul', pot: 'p1', at: at(55) })).toBeUndefined()
  expect(code({ kind: 'haul', pot: 'p1', at: at(45) })).toBe('haul-not-set')
  expect(code({ kind: 'set', pot: 'p1', at: '2025-12-31T00:00:00.000Z' })).toBe('unknown-pot')
})
