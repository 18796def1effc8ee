import type { Bridge } from '@shared/contract/bridge'
import { JournalBook } from '@shared/journal/book'
import type { EventDraft, JournalEvent } from '@shared/schema/journal'
import { userEvent } from 'vitest/browser'
import { beforeEach, expect, test } from 'vitest'
import { render } from 'vitest-browser-svelte'
import { locker } from '@renderer/state/locker.svelte'
import { runDesk } from '@renderer/state/run-desk.svelte'
import { notices } from '@renderer/ui/notices.svelte'
import Runs from './Runs.svelte'

/* A day's work by keyboard, on a real history kept in memory. */

const start = Date.parse('2026-05-01T06:00:00.000Z')
let book: JournalBook
let written: EventDraft[]
let refuse: string | undefined

/** Answers what Runs asks; each event comes a minute after the one before. */
const bridge = ((channel: string, request: { events?: EventDraft[] }) => {
  if (channel === 'locker:state') return Promise.resolve({ ok: true, value: { state: copy(), trouble: [] } })
  if (refuse !== undefined) return Promise.resolve({ ok: false, error: { code: 'storage', message: refuse } })
  const events = (request.events ?? []).map((draft, i) => {
    const seq = written.length + i + 2
    return {
      at: new Date(start + seq * 60_000).toISOString(),
      ...{ ...draft, version: 1, id: `e${seq}`, machine: 'm', seq },
    } as JournalEvent
  })
  written.push(...(request.events ?? []))
  book.add(events, Date.now())
  return Promise.resolve({ ok: true, value: { state: copy(), events: events.map(({ id }) => id) } })
}) as unknown as Bridge
const copy = () => structuredClone(book.state)

beforeEach(async () => {
  const pots = ['1', '2', '3', '4'].map((number) => ({ pot: `p${number}`, number, design: 'd', parts: [] }))
  const added = {
    ...{ kind: 'add-pots', pots, version: 1, id: 'e1', machine: 'm', seq: 1 },
    at: new Date(start).toISOString(),
  } as JournalEvent
  book = new JournalBook([[added]], Date.now())
  written = []
  refuse = undefined
  notices.list = []
  window.bridge = bridge
  runDesk.choose(undefined)
  await locker.load()
})

const field = (screen: Awaited<ReturnType<typeof render>>) => screen.getByLabelText('Float number')

test('Enter sets the next float, a range sets several, all on one string', async () => {
  const screen = await render(Runs)
  await expect.element(screen.getByRole('button', { name: 'Set 1' }).first()).toBeVisible()
  await userEvent.keyboard('{Enter}')
  await expect.element(screen.getByText('0 of 1 up')).toBeVisible()
  await userEvent.fill(field(screen), '2-3')
  await userEvent.keyboard('{Enter}')
  await expect.element(screen.getByText('0 of 3 up')).toBeVisible()
  expect(written.map((event) => 'pot' in event && event.pot)).toEqual(['p1', 'p2', 'p3'])
  expect(new Set(written.map((event) => 'run' in event && event.run)).size).toBe(1)
  await userEvent.fill(field(screen), '2')
  await expect.element(screen.getByRole('alert').getByText('Pot 2 is not ashore')).toBeVisible()
  await userEvent.fill(field(screen), '44')
  await expect.element(screen.getByRole('alert').getByText('no pot with the number 44')).toBeVisible()
})

test('a haul is written by keys alone; a float passed by is told at once', async () => {
  const screen = await render(Runs)
  await userEvent.fill(field(screen), '1-4')
  await userEvent.keyboard('{Enter}')
  await screen.getByRole('radio', { name: 'Hauling' }).click()
  await userEvent.fill(field(screen), '2')
  await userEvent.keyboard('{Enter}')
  await expect.element(screen.getByRole('region', { name: 'What came up in 2' })).toHaveFocus()
  await userEvent.keyboard('kkuuu{Shift>}u{/Shift}fbb13')
  await userEvent.keyboard('{Enter}')
  await expect.element(screen.getByRole('heading', { name: 'A float was passed by' })).toBeVisible()
  expect(written.at(-1)).toEqual({
    ...{ kind: 'haul', pot: 'p2', kept: 2, undersized: 2, female: 1, other: 0 },
    ...{ baitLeft: 'some', damage: ['netting', 'frame'] },
  })
  await screen.getByRole('button', { name: 'Still there: 1' }).click()
  await expect.element(screen.getByRole('heading', { name: 'A float was passed by' })).not.toBeInTheDocument()
})

test('S sets it again where it came up, and most undersized says to move', async () => {
  const screen = await render(Runs)
  await userEvent.fill(field(screen), '1-2')
  await userEvent.keyboard('{Enter}')
  await screen.getByRole('radio', { name: 'Hauling' }).click()
  await userEvent.keyboard('{Tab}')
  await userEvent.click(field(screen))
  await userEvent.keyboard('{Enter}')
  await expect.element(screen.getByRole('region', { name: 'What came up in 1' })).toHaveFocus()
  await userEvent.keyboard('kuus')
  await expect.element(screen.getByText('Most in 1 were undersized')).toBeVisible()
  expect(written.slice(-2).map(({ kind }) => kind)).toEqual(['haul', 'set'])
  await expect.element(screen.getByRole('button', { name: 'Haul 2' }).first()).toBeVisible()
  expect(locker.missing).toEqual([])
})

test('what cannot be written stays on the card, and its reason is told', async () => {
  const screen = await render(Runs)
  await userEvent.fill(field(screen), '1')
  await userEvent.keyboard('{Enter}')
  await screen.getByRole('radio', { name: 'Hauling' }).click()
  await userEvent.click(field(screen))
  await userEvent.keyboard('{Enter}')
  refuse = 'The disk is full. Nothing was written.'
  await userEvent.keyboard('kk{Enter}')
  await expect.poll(() => notices.list.at(-1)?.text).toBe(refuse)
  const kept = screen.getByRole('group', { name: 'Kept' })
  await expect.element(kept.getByText('2', { exact: true })).toBeVisible()
  await userEvent.keyboard('{Escape}')
  await expect.element(field(screen)).toHaveFocus()
})
