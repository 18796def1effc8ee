import { createRawSnippet } from 'svelte'
import { userEvent } from 'vitest/browser'
import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import CommandPalette from './CommandPalette.svelte'
import { commands } from './commands.svelte'
import CurveChart from './CurveChart.svelte'
import DataTable from './DataTable.svelte'
import Dialog from './Dialog.svelte'
import Tabs from './Tabs.svelte'
import VersionProblems from './VersionProblems.svelte'

const text = (html: string) => createRawSnippet(() => ({ render: () => `<div>${html}</div>` }))

test('a dialog keeps the focus, closes on escape and gives the focus back', async () => {
  const opener = document.createElement('button')
  document.body.append(opener)
  opener.focus()
  const onclose = vi.fn()
  const screen = await render(Dialog, {
    title: 'Shelf',
    open: true,
    onclose,
    children: text('<button>One</button>'),
  })
  await expect.element(screen.getByRole('dialog', { name: 'Shelf' })).toBeVisible()
  for (let press = 0; press < 5; press++) await userEvent.keyboard('{Tab}')
  expect(document.activeElement?.closest('dialog') ?? document.activeElement).not.toBe(opener)
  await userEvent.keyboard('{Escape}')
  expect(onclose).toHaveBeenCalled()
  await screen.rerender({ open: false })
  expect(document.activeElement).toBe(opener)
  opener.remove()
})

test('a dialog closes by a press beside it, but not by one that only ends there', async () => {
  const onclose = vi.fn()
  const screen = await render(Dialog, {
    title: 'Shelf',
    open: true,
    onclose,
    children: text('<input aria-label="Name">'),
  })
  const dialog = screen.getByRole('dialog').element()
  const press = (began: Element, ended: Element) => {
    began.dispatchEvent(new PointerEvent('pointerdown', { bubbles: true }))
    ended.dispatchEvent(new MouseEvent('click', { bubbles: true }))
  }
  press(screen.getByRole('textbox').element(), dialog)
  expect(onclose).not.toHaveBeenCalled()
  press(dialog, dialog)
  expect(onclose).toHaveBeenCalledOnce()
})

test('tabs go round by arrow keys', async () => {
  const onchange = vi.fn()
  const tabs = [
    { value: 'pot', label: 'Pot' },
    { value: 'why', label: 'Why' },
  ]
  const screen = await render(Tabs, {
    label: 'The pot',
    value: 'pot',
    tabs,
    children: text('in it'),
    onchange,
  })
  screen.getByRole('tab', { name: 'Pot' }).element().focus()
  await userEvent.keyboard('{ArrowLeft}')
  expect(onchange).toHaveBeenLastCalledWith('why')
  await expect.element(screen.getByRole('tab', { name: 'Why' })).toHaveFocus()
})

// The rows' type cannot be told to `render`, so the columns take them as they come.
const one = (row: unknown) => row as { name: string; n: number }
const columns = [
  { key: 'name', label: 'Name', text: (row: unknown) => one(row).name },
  {
    key: 'n',
    label: 'Count',
    number: true,
    text: (row: unknown) => String(one(row).n),
    sort: (row: unknown) => one(row).n,
  },
]
const rowKey = (row: unknown) => one(row).name

test('a table sorts by a column, both ways, and says so', async () => {
  const rows = [2, 10, 1].map((n) => ({ name: `pot ${n}`, n }))
  const screen = await render(DataTable, {
    caption: 'Pots',
    rows,
    columns,
    rowKey,
  })
  const counts = () =>
    screen
      .getByRole('row')
      .elements()
      .slice(1)
      .map((row) => row.lastElementChild?.textContent?.trim())
  await screen.getByRole('button', { name: 'Count' }).click()
  expect(counts()).toEqual(['1', '2', '10'])
  await expect
    .element(screen.getByRole('columnheader', { name: 'Count' }))
    .toHaveAttribute('aria-sort', 'ascending')
  await screen.getByRole('button', { name: 'Count' }).click()
  expect(counts()).toEqual(['10', '2', '1'])
})

test('of ten thousand rows only those in view are in the page, and the last can be reached', async () => {
  const rows = Array.from({ length: 10_000 }, (_, n) => ({ name: `pot ${n}`, n }))
  const screen = await render(DataTable, {
    caption: 'Pots',
    rows,
    columns,
    rowKey,
  })
  expect(screen.getByRole('row').elements().length).toBeLessThan(80)
  const region = screen.getByRole('region', { name: 'Pots' }).element()
  region.scrollTop = region.scrollHeight
  await expect.element(screen.getByText('pot 9999', { exact: true })).toBeVisible()
})

test('a chart is read by keys and has its numbers as a table', async () => {
  const points = [0, 1, 2, 3].map((x) => ({ x, y: x / 10 }))
  const screen = await render(CurveChart, {
    title: 'Grip',
    from: 0,
    to: 3,
    xLabel: 'Ring',
    xUnit: 'kg',
    yLabel: 'Moves at',
    unit: 'm/s',
    series: [{ label: 'Moves at', points }],
  })
  const plot = screen.getByRole('slider', { name: 'Grip' })
  ;(plot.element() as SVGElement).focus()
  await userEvent.keyboard('{ArrowRight}{ArrowRight}')
  await expect.element(plot).toHaveAttribute('aria-valuetext', '2 kg: 0.2 m/s')
  await userEvent.keyboard('{End}')
  await expect.element(plot).toHaveAttribute('aria-valuetext', '3 kg: 0.3 m/s')
  await screen.getByRole('button', { name: 'Show the numbers as a table' }).click()
  await expect.element(screen.getByRole('cell', { name: '0.3 m/s' })).toBeVisible()
})

test('no command acts behind an open dialog, by its key or from the menu', async () => {
  const run = vi.fn()
  const forget = commands.register([{ id: 'undo', label: 'Undo', group: 'Edit', keys: 'Ctrl+Z', run }])
  const press = () => commands.press(new KeyboardEvent('keydown', { key: 'z', ctrlKey: true }))
  const screen = await render(Dialog, { title: 'Shelf', open: true, onclose: vi.fn(), children: text('One') })
  expect(press()).toBe(false)
  commands.run('undo')
  expect(run).not.toHaveBeenCalled()
  await screen.rerender({ open: false })
  expect(press()).toBe(true)
  commands.run('undo')
  expect(run).toHaveBeenCalledTimes(2)
  forget()
})

test('the palette finds a command by its words and runs it', async () => {
  const run = vi.fn()
  const forget = commands.register([
    { id: 'a', label: 'Undo', group: 'Edit', run: vi.fn() },
    { id: 'b', label: 'Open the part: Rope', group: 'Bench', run },
    { id: 'b-too', label: 'Open the part: Rope', group: 'Bench', keys: 'Ctrl+B', run },
  ])
  const screen = await render(CommandPalette, { open: true, onclose: vi.fn() })
  await expect.element(screen.getByRole('combobox')).toHaveFocus()
  await userEvent.keyboard('rope part')
  expect(screen.getByRole('option').elements()).toHaveLength(1)
  await userEvent.keyboard('{Enter}')
  expect(run).toHaveBeenCalledOnce()
  forget()
})

test('two versions can be settled; a file with no earlier version leads to the backups', async () => {
  const onbackups = vi.fn()
  const settle = vi.fn(() => Promise.resolve({ ok: true as const, value: {} }))
  const screen = await render(VersionProblems, {
    problems: [
      { id: 'a', kind: 'conflict', message: 'Two versions.', other: {} },
      { id: 'b', kind: 'set-aside', message: 'It cannot be read.' },
    ],
    settle,
    onbackups,
  })
  await screen.getByRole('button', { name: 'Look in the backups' }).click()
  expect(onbackups).toHaveBeenCalledOnce()
  await screen.getByRole('button', { name: 'Keep both' }).click()
  expect(settle).toHaveBeenCalledWith('a', 'keep-both')
})
