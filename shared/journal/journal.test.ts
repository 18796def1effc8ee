import type { JournalEvent } from '@shared/schema/journal'
import { JournalEventSchema } from '@shared/schema/journal'
import fc from 'fast-check'
import * as v from 'valibot'
import { expect, test } from 'vitest'
import { foldJournal } from './fold'
import type { LockerState } from './locker-state'
import { mergeJournals } from './merge'

const nowMs = Date.parse('2026-06-01T00:00:00.000Z')
const fold = (events: readonly JournalEvent[]) => foldJournal(mergeJournals([events]), nowMs)

const part = (id: string, kind: 'rope' | 'netting') => ({ id, kind, installedOn: '2025-01-01' })
const added = ['a', 'b', 'c'].map((pot, i) => ({
  ...{ pot, number: String(i + 1), design: 'round' },
  parts: [part(`${pot}-rope`, 'rope'), part(`${pot}-net`, 'netting')],
}))

const pots = fc.constantFrom('a', 'b', 'c', 'unknown')
const parts = fc.constantFrom('a-rope', 'b-rope', 'b-net', 'c-net', 'n1', 'unknown')
const body = fc.oneof(
  fc.record({ kind: fc.constant('set'), pot: pots, run: fc.constantFrom('r1', 'r2') }),
  fc.record({ kind: fc.constant('haul'), pot: pots, kept: fc.nat(5), undersized: fc.nat(5) }),
  fc.record({ kind: fc.constantFrom('lose', 'find', 'retire', 'clean'), pot: pots }),
  fc.record({ kind: fc.constant('store'), pot: pots, where: fc.constantFrom('sun', 'shade', 'indoors') }),
  fc.record({ kind: fc.constant('inspect'), part: parts, grade: fc.constantFrom(0, 1, 2, 3, 4) }),
  fc.record({ kind: fc.constant('repair'), part: parts, what: fc.constant('spliced') }),
  fc.record({ kind: fc.constant('swap-part'), part: parts, to: pots }),
  fc.record({
    kind: fc.constant('replace'),
    part: parts,
    with: fc.constantFrom('n1', 'n2', 'n3').map((id) => part(id, 'rope')),
    reason: fc.constantFrom('planned', 'failed'),
  }),
  fc.record({
    kind: fc.constant('stock'),
    item: fc.constant('rope-pp-8'),
    change: fc.integer({ min: -9, max: 9 }),
  }),
  fc.record({ kind: fc.constant('stock'), item: fc.constant('rope-pp-8'), counted: fc.nat(50) }),
  fc.record({
    ...{ kind: fc.constant('price'), item: fc.constant('rope-pp-8'), each: fc.nat(9) },
    per: fc.constantFrom('metre', 'coil'),
  }),
  fc.record({ kind: fc.constant('photo'), pot: pots, part: parts, file: fc.constantFrom('x.jpg', 'y.jpg') }),
  fc.record({
    kind: fc.constant('add-pots'),
    // A pot and a number that may be there already.
    pots: fc
      .constantFrom('a', 'd', 'e')
      .map((pot) => [{ pot, number: '2', design: 'round', parts: [part(`${pot}-rope`, 'rope')] }]),
  }),
  fc.record({ kind: fc.constant('undo'), target: fc.nat(30).map((n) => `e${n}`) }),
  fc.record({
    kind: fc.constant('correct'),
    target: fc.nat(30).map((n) => `e${n}`),
    fields: fc.constantFrom({ kept: 9 }, { pot: 'c' }, { at: '2025-07-01T12:00:00.000Z' }, { seq: 4 }),
  }),
)
const history = fc
  .array(fc.tuple(body, fc.nat(700 * 24), fc.constantFrom('boat', 'shed', 'club')), { maxLength: 30 })
  .map((drafts) => [
    event(0, 'boat', 0, { kind: 'add-pots', pots: added }),
    ...drafts.map(([draft, hour, machine], i) => event(i + 1, machine, hour, draft)),
  ])

function event(n: number, machine: string, hour: number, draft: object): JournalEvent {
  const at = new Date(Date.parse('2025-01-01T00:00:00.000Z') + hour * 3_600_000).toISOString()
  return v.parse(JournalEventSchema, { version: 1, id: `e${n}`, machine, seq: n + 1, at, ...draft })
}

test('a history gives one state however it is split over machines and whatever order it arrives in', () => {
  fc.assert(
    fc.property(history, fc.infiniteStream(fc.nat()), (events, numbers) => {
      const random = () => numbers.next().value ?? 0
      const files: JournalEvent[][] = [[], [], []]
      const shuffled = events.map((e) => ({ e, key: random() })).sort((a, b) => a.key - b.key)
      for (const { e } of shuffled) {
        files[random() % 3]?.push(e)
        // A copied file brings a line twice, as another object.
        if (random() % 4 === 0) files[random() % 3]?.push(structuredClone(e))
      }
      expect(foldJournal(mergeJournals(files), nowMs)).toEqual(fold(events))
    }),
    { numRuns: 300 },
  )
})

test('undoing any event gives the state without it, and undoing the undo brings it back', () => {
  fc.assert(
    fc.property(history, fc.nat(), fc.integer({ min: 0, max: 700 * 24 }), (events, pick, hour) => {
      const target = events[pick % events.length]
      if (!target) return
      const undo = event(90, 'club', hour, { kind: 'undo', target: target.id })
      const without = events.filter((e) => e !== target)
      expect(known(fold([...events, undo]))).toEqual(known(fold(without)))
      const redo = event(91, 'club', hour, { kind: 'undo', target: undo.id })
      expect(fold([...events, undo, redo])).toEqual(fold(events))
    }),
    { numRuns: 300 },
  )
})

/** Leaving an event out altogether makes what refers to it point nowhere; that note is not part of the state. */
function known(state: LockerState): LockerState {
  return {
    ...state,
    problems: state.problems.filter(
      (problem) => problem.code !== 'unknown-target' && problem.code !== 'bad-correction',
    ),
  }
}

const add = event(0, 'boat', 0, { kind: 'add-pots', pots: added })
const codes = (events: readonly JournalEvent[]) => fold(events).problems.map((problem) => problem.code)

test('days in the water and hauls count for the parts that were on the pot', () => {
  const state = fold([
    add,
    event(1, 'boat', 48, { kind: 'set', pot: 'a' }),
    event(2, 'boat', 96, { kind: 'haul', pot: 'a', kept: 2, undersized: 1 }),
    event(3, 'boat', 100, { kind: 'swap-part', part: 'a-rope', to: 'b' }),
    event(4, 'boat', 120, { kind: 'set', pot: 'b' }),
    event(5, 'boat', 144, { kind: 'haul', pot: 'b' }),
  ])
  expect(state.pots['a']?.been).toMatchObject({ hauls: 1, immersedDays: 2 })
  expect(state.pots['a']?.parts).toEqual(['a-net', 'b-rope'])
  expect(state.parts['a-rope']).toMatchObject({
    pot: 'b',
    status: 'fitted',
    carried: { hauls: 1, immersedDays: 2 },
  })
  expect(state.pots['a']?.caught).toEqual({ kept: 2, undersized: 1, female: 0, other: 0 })
})

test('what cannot be is flagged and the rest is kept', () => {
  expect(codes([add, event(1, 'boat', 5, { kind: 'haul', pot: 'a' })])).toEqual(['haul-not-set'])
  expect(codes([add, event(1, 'boat', 24 * 900, { kind: 'set', pot: 'a' })])).toEqual(['in-the-future'])
  const late = { id: 'n1', kind: 'rope', installedOn: '2025-09-01' }
  const replaced = event(1, 'boat', 2, { kind: 'replace', part: 'a-rope', with: late, reason: 'worn' })
  expect(codes([add, replaced, event(2, 'boat', 3, { kind: 'inspect', part: 'n1', grade: 1 })])).toEqual([
    'inspection-before-part',
  ])
  const twin = event(1, 'shed', 2, {
    kind: 'add-pots',
    pots: [{ pot: 'd', number: '2', design: 'box', parts: [] }],
  })
  const state = fold([add, twin])
  expect(state.problems.map((problem) => problem.code)).toEqual(['number-twice'])
  expect(Object.keys(state.pots)).toEqual(['a', 'b', 'c', 'd'])
})

test('two different events with one id are told, and the earlier stands', () => {
  const one = event(1, 'boat', 5, { kind: 'set', pot: 'a' })
  const other = { ...one, pot: 'b' } as JournalEvent
  for (const files of [
    [[add, one], [other]],
    [[other], [add, one]],
  ]) {
    const state = foldJournal(mergeJournals(files), nowMs)
    expect(state.problems.map((problem) => problem.code)).toEqual(['id-twice'])
    expect(state.pots['a']?.status).toBe('in-water')
  }
})

test('a correction changes what it names and nothing else', () => {
  const haul = event(2, 'boat', 30, { kind: 'haul', pot: 'a', kept: 1, undersized: 4 })
  const set = event(1, 'boat', 24, { kind: 'set', pot: 'a' })
  const fixed = fold([
    add,
    set,
    haul,
    event(3, 'shed', 40, { kind: 'correct', target: 'e2', fields: { kept: 3 } }),
  ])
  expect(fixed.pots['a']?.caught).toEqual({ kept: 3, undersized: 4, female: 0, other: 0 })
  const bad = [add, set, haul, event(3, 'shed', 40, { kind: 'correct', target: 'e2', fields: { kept: -3 } })]
  expect(codes(bad)).toEqual(['bad-correction'])
  expect(fold(bad).pots['a']?.caught.kept).toBe(1)
})
