import { foldJournal } from '@shared/journal/fold'
import { mergeJournals } from '@shared/journal/merge'
import type { EventDraft, JournalEvent } from '@shared/schema/journal'
import { wearAssumptions } from '@shared/wear/assumptions'
import { expect, test } from 'vitest'
import { onBudget } from './budget'
import { dueList } from './due'
import { gradeLooks } from './inspection-points'
import { inspectionSheets } from './inspection-sheet'
import { lockerLives, wearOfPot, type LockerContext } from './locker-lives'
import { markDone } from './mark-done'
import { ownLives } from './own-lives'
import { planCost } from './plan-cost'
import { shoppingList } from './shopping'

const nowMs = Date.parse('2026-05-01T00:00:00.000Z')
const context: LockerContext = { nowMs, sheet: wearAssumptions, aheadMonths: 6 }

const rope = { kind: 'rope', material: 'PP', diameterMm: 8, lengthM: 20, cost: 18 } as const
const pots = ['1', '2', '3'].map((number) => ({
  ...{ pot: `p${number}`, number, design: 'round' },
  parts: [
    { ...rope, id: `rope${number}`, installedOn: '2025-05-01' },
    {
      id: `net${number}`,
      kind: 'netting' as const,
      material: 'PE',
      barLengthMm: 25,
      installedOn: '2025-05-01',
      cost: 40,
    },
    {
      id: `cord${number}`,
      kind: 'release-cord' as const,
      material: 'cotton',
      diameterMm: 3,
      installedOn: '2026-04-01',
      cost: 1,
    },
  ],
}))
const drafts: EventDraft[] = [
  { kind: 'add-pots', pots, at: '2025-05-01T08:00:00.000Z' },
  { kind: 'inspect', part: 'rope1', grade: 4, at: '2026-04-20T08:00:00.000Z' },
  { kind: 'inspect', part: 'rope2', grade: 1, at: '2026-04-20T08:00:00.000Z' },
  { kind: 'price', item: 'rope-pp-8mm', each: 45, per: 'coil', coilM: 100, at: '2026-04-21T08:00:00.000Z' },
  { kind: 'stock', item: 'rope-pp-8mm', counted: 5, at: '2026-04-21T08:00:00.000Z' },
]
const numbered = (more: readonly EventDraft[]): JournalEvent[] =>
  [...drafts, ...more].map((draft, i) => ({
    ...{ version: 1, id: `s${i}`, machine: 'shed', seq: i + 1, at: new Date(nowMs).toISOString(), ...draft },
  })) as JournalEvent[]
const locker = (...more: EventDraft[]) => foldJournal(mergeJournals([numbered(more)]), nowMs)
const seen = (...more: EventDraft[]) => {
  const state = locker(...more)
  const reports = lockerLives(state, context)
  return { state, reports, due: dueList(state, reports, context) }
}

test('a rope found at a bad grade is due now, one found good is not', () => {
  const { due, reports } = seen()
  const ropes = due.filter((item) => item.report?.part.part.kind === 'rope')
  expect(ropes.map(({ action, number, by }) => [action, number, by])).toContainEqual([
    'replace',
    '1',
    '2026-05-01',
  ])
  expect(ropes.filter((item) => item.number === '2')).toEqual([])
  expect(reports.find((report) => report.part.part.id === 'rope2')?.life.decision).toBe('fine')
})

test('a bad rope weakens what is checked, growth raises the drag', () => {
  const down = { kind: 'set', pot: 'p1', at: '2026-03-01T00:00:00.000Z' } as const
  const { state, reports, due } = seen(down)
  const [p1, p2] = [state.pots['p1'], state.pots['p2']]
  if (!p1 || !p2) throw new Error('the pots are gone')
  const worn = wearOfPot(reports, p1, nowMs)
  expect(worn.ropeStrengthLeft).toBeLessThan(wearOfPot(reports, p2, nowMs).ropeStrengthLeft ?? NaN)
  expect(worn.foulingFactor).toBeGreaterThan(1.5)
  expect(wearOfPot(reports, p2, nowMs).foulingFactor).toBe(1)
  expect(due.filter((item) => item.action === 'clean').map((item) => item.number)).toEqual(['1'])
})

test('rope is bought by the coil less what is in hand, and its total has a price', () => {
  const { due, state } = seen()
  const list = shoppingList(due, state)
  const line = list.lines.find(({ item }) => item === 'rope-pp-8mm')
  const ropes = due.filter(
    ({ action, report }) => action === 'replace' && report?.part.part.kind === 'rope',
  ).length
  expect(line).toMatchObject({
    unit: 'm',
    needed: 20 * ropes,
    inHand: 5,
    toBuy: 20 * ropes - 5,
    coils: 1,
    cost: 45,
  })
  expect(list.total).toBeGreaterThanOrEqual(45)
})

test('marking a rope as replaced puts a new one in, takes it off the stock, and it is due no more', () => {
  const { due } = seen()
  const item = due.find((entry) => entry.action === 'replace' && entry.report?.part.part.id === 'rope1')
  if (!item) throw new Error('the rope is not due')
  const after = seen(...markDone(item, { newPart: 'rope1b', on: '2026-05-01', fromStock: true }))
  expect(after.state.pots['p1']?.parts).toContain('rope1b')
  expect(after.state.parts['rope1']?.status).toBe('retired')
  expect(after.state.stock['rope-pp-8mm']).toBe(-15)
  expect(after.due.filter((entry) => entry.report?.part.part.id.startsWith('rope1'))).toEqual([])
})

test('a cord comes first on a budget, then what spares most for the money; nothing past the budget', () => {
  const old = {
    kind: 'replace',
    part: 'cord2',
    reason: 'worn',
    with: { id: 'cord2b', kind: 'release-cord', material: 'cotton', installedOn: '2025-01-01', cost: 1 },
  } as const
  const { due, state } = seen(old)
  const plan = onBudget(due, 9, state, context)
  expect(plan.first.map(({ item }) => item.report?.part.part.id)).toEqual(['cord2b'])
  expect(plan.spent).toBeLessThanOrEqual(9)
  const all = onBudget(due, 1000, state, context)
  expect(all.later).toEqual([])
  expect(all.first[0]?.item.report?.part.part.id).toBe('cord2b')
})

test('a cord that was never paid for is bought first at its price on the list', () => {
  const { due, state } = seen(
    { kind: 'price', item: 'release-cord-cotton', each: 0.5, per: 'metre' },
    {
      ...{ kind: 'replace', part: 'cord2', reason: 'worn' },
      with: { id: 'cord2b', kind: 'release-cord', material: 'cotton', installedOn: '2025-01-01', lengthM: 2 },
    },
  )
  const plan = onBudget(due, 3, state, context)
  expect(plan.first.map(({ item, price }) => [item.report?.part.part.id, price])).toEqual([['cord2b', 1]])
  const cord = due.flatMap(({ report }) => (report?.part.part.id === 'cord2b' ? [report] : []))
  expect(planCost(cord, cord, state, context)).toMatchObject({ newParts: 1, unknown: 0 })
})

test('a plan that changes what is worn lowers the expected cost of failures', () => {
  const { due, reports, state } = seen()
  const changed = due.flatMap((item) => (item.action === 'replace' && item.report ? [item.report] : []))
  const cost = planCost(changed, reports, state, context)
  expect(cost.newParts).toBeGreaterThan(0)
  expect(cost.failuresWithPlan).toBeLessThan(cost.failuresWithout)
  expect(planCost([], reports, state, context).failuresWithPlan).toBe(cost.failuresWithout)
})

test('a part in stock is nothing to buy, but counts in the plan: it was paid for, and is used up', () => {
  const changedOf = ({ due }: ReturnType<typeof seen>) =>
    due.flatMap(({ action, report }) => (action === 'replace' && report ? [report] : []))
  const [bare, stocked] = [seen(), seen({ kind: 'stock', item: 'rope-pp-8mm', counted: 1000 })]
  const ropeIn = ({ due, state }: ReturnType<typeof seen>) =>
    shoppingList(due, state).lines.find(({ item }) => item === 'rope-pp-8mm')
  expect(ropeIn(bare)?.toBuy).toBeGreaterThan(0)
  expect(ropeIn(stocked)).toMatchObject({ toBuy: 0, cost: 0 })
  const worth = (one: ReturnType<typeof seen>) =>
    planCost(changedOf(one), one.reports, one.state, context).newParts
  expect(worth(stocked)).toBe(worth(bare))
})

test('every pot has a sheet with what to look for on each of its parts', () => {
  const sheets = inspectionSheets(seen().reports)
  expect(sheets.map((sheet) => sheet.number)).toEqual(['1', '2', '3'])
  const line = sheets[0]?.parts[0]
  expect(line).toMatchObject({ title: 'Rope', lastInspected: '2026-04-20' })
  expect(line?.discardIf).toContain('Powder between the strands')
})

test('failures and survivals are learned from, parts taken out good as survived', () => {
  const at = '2026-02-01T00:00:00.000Z'
  const change = (n: number, reason: 'failed' | 'worn') =>
    ({
      kind: 'replace',
      part: `rope${n}`,
      reason,
      at,
      with: { ...rope, id: `new${n}`, installedOn: '2026-02-01' },
    }) as const
  const { record } = ownLives(locker(change(1, 'failed'), change(3, 'worn')), wearAssumptions, nowMs).get(
    'rope PP',
  ) ?? { record: undefined }
  expect(record?.failed.map(Math.round)).toEqual([9])
  expect(record?.survived.map(Math.round).sort((a, b) => a - b)).toEqual([3, 3, 9, 12])
})

test('what has no price in the list costs what was paid for it, else it is counted as without a price', () => {
  const parts = [
    { id: 'net', kind: 'netting', material: 'PE', cost: 40 },
    { id: 'float', kind: 'float', material: 'foam', count: 2 },
    { id: 'hook', kind: 'door-hook' },
    { id: 'line', kind: 'rope', material: 'PES', diameterMm: 10 },
    { id: 'second', kind: 'rope', material: 'PES', diameterMm: 10, lengthM: 12 },
  ] as const
  const { state, due } = seen(
    {
      kind: 'add-pots',
      pots: [
        {
          pot: 'p9',
          number: '9',
          design: 'round',
          parts: parts.map((part) => ({ ...part, installedOn: '2025-05-01' })),
        },
      ],
    },
    ...parts.map(({ id }) => ({ kind: 'inspect', part: id, grade: 4 }) as const),
    { kind: 'price', item: 'door-hook', each: 3, per: 'piece' },
    // A coil whose length is not known gives no price a metre.
    { kind: 'price', item: 'rope-pes-10mm', each: 60, per: 'coil' },
  )
  const own = due.filter((item) => item.number === '9')
  expect(own.map(({ action }) => action)).toEqual(parts.map(() => 'replace'))
  const { lines, total, unpriced } = shoppingList(own, state)
  expect(
    lines.map(({ item, unit, toBuy, cost, unmeasured }) => [item, unit, toBuy, cost, unmeasured]),
  ).toEqual([
    ['door-hook', 'piece', 1, 3, 0],
    ['float-foam', 'piece', 2, undefined, 0],
    ['netting-pe', 'panel', 1, 40, 0],
    ['rope-pes-10mm', 'm', 12, undefined, 1],
  ])
  expect([total, unpriced]).toEqual([43, 2])
})

test('done is written as it was done: a look with what was found, a cleaning, a new part for a failed one', () => {
  const { due } = seen({ kind: 'set', pot: 'p1', at: '2026-03-01T00:00:00.000Z' })
  const clean = due.find((item) => item.action === 'clean')
  const replace = due.find((item) => item.report?.part.part.id === 'rope1')
  if (!clean || !replace) throw new Error('nothing to do')
  const done = { newPart: 'new', on: '2026-05-01' }
  expect(markDone(clean, done)).toEqual([{ kind: 'clean', pot: 'p1' }])
  const look = { ...replace, action: 'inspect' } as const
  expect(markDone(look, { ...done, grade: 2, diameterLossPct: 4, brokenBars: 0 })).toEqual([
    { kind: 'inspect', part: 'rope1', grade: 2, diameterLossPct: 4, brokenBars: 0 },
  ])
  expect(markDone(look, done)).toEqual([{ kind: 'inspect', part: 'rope1' }])
  expect(markDone(replace, { ...done, reason: 'failed' })).toMatchObject([
    {
      kind: 'replace',
      part: 'rope1',
      reason: 'failed',
      with: { id: 'new', installedOn: '2026-05-01', lengthM: 20 },
    },
  ])
  const { report, ...unreported } = replace
  expect(report?.part.part.id).toBe('rope1')
  expect(markDone(unreported, done)).toEqual([])
})

test('grades are described as they look on rope, on netting and on anything else', () => {
  expect(gradeLooks('rope')).not.toEqual(gradeLooks('float'))
  expect(gradeLooks('netting')[3]).toContain('brittle')
  expect(gradeLooks('float')[4]).toBe('Any reason to discard it')
  for (const kind of ['rope', 'netting', 'float'] as const)
    expect(Object.keys(gradeLooks(kind))).toEqual(['0', '1', '2', '3', '4'])
})
