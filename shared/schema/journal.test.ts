import fc from 'fast-check'
import * as v from 'valibot'
import { expect, test } from 'vitest'
import { JournalEventSchema, parseEvent } from './journal'
import { quickCheck } from './quick-check'

const envelope = { version: 1, id: 'e1', machine: 'boat', seq: 1, at: '2026-05-01T06:00:00.000Z' }
const part = { id: 'r', kind: 'rope', installedOn: '2026-01-31', diameterMm: 8 }
const events = [
  { ...envelope, kind: 'set', pot: 'p1', run: 'r1', depthM: 12.5, bait: 'herring' },
  { ...envelope, kind: 'haul', pot: 'p1', kept: 2, baitLeft: 'some', damage: ['rope'] },
  { ...envelope, kind: 'add-pots', pots: [{ pot: 'p1', number: '7', design: 'd', parts: [part] }] },
  { ...envelope, kind: 'inspect', part: 'r', grade: 3, diameterLossPct: 2.5 },
  { ...envelope, kind: 'stock', item: 'rope-pp-8mm', change: -20 },
  { ...envelope, kind: 'photo', pot: 'p1', file: 'a.jpg' },
]

test('whole events pass the quick test, so that the slow one is spared', () => {
  const quick = JournalEventSchema.options.map(quickCheck)
  for (const event of events) expect(quick.filter((check) => check(event))).toHaveLength(1)
})

test('an event read quickly is what the schema makes of it, whatever is wrong with it', () => {
  const odd = fc.oneof(
    fc.constantFrom<unknown>(
      null,
      undefined,
      NaN,
      Infinity,
      -1,
      0.5,
      1e9,
      '',
      ' 7 ',
      'x'.repeat(500),
      '2026-02-30',
      [],
      {},
      [part],
      true,
    ),
    fc.jsonValue(),
  )
  const changed = fc
    .tuple(
      fc.constantFrom(...events),
      fc.constantFrom(
        'id',
        'at',
        'seq',
        'kind',
        'pot',
        'pots',
        'kept',
        'grade',
        'damage',
        'extra',
        'item',
        'run',
        'depthM',
      ),
      odd,
      fc.boolean(),
    )
    .map(([event, key, value, drop]): unknown =>
      drop
        ? Object.fromEntries(Object.entries(event).filter(([name]) => name !== key))
        : { ...event, [key]: value },
    )
  fc.assert(
    fc.property(fc.oneof(changed, odd), (raw) => {
      const slow = v.safeParse(JournalEventSchema, raw)
      const quick = parseEvent(raw)
      expect(quick.success).toBe(slow.success)
      if (slow.success) expect(quick.output).toEqual(slow.output)
    }),
    { numRuns: 3000 },
  )
})

test.each([
  ['a time that is not in UTC', { at: '2026-05-01T06:00:00.000+02:00' }],
  ['a month that is none', { at: '2026-13-01T06:00:00.000Z' }],
  ['a field nobody knows', { weather: 'fair' }],
  ['a count below nothing', { kept: -1 }],
  ['a newer version', { version: 2 }],
])('refuses %s', (_, change) => {
  expect(parseEvent({ ...events[1], ...change }).success).toBe(false)
})
