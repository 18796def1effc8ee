import { createRawSnippet } from 'svelte'
import { userEvent } from 'vitest/browser'
import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import FormDialog from './FormDialog.svelte'

const field = createRawSnippet(() => ({ render: () => '<input aria-label="Name" />' }))
const shown = (onwrite: () => Promise<boolean>, onclose: () => void) =>
  render(FormDialog, { title: 'A row', does: 'Keep it', onwrite, onclose, children: field })

test('Enter in a field writes the form, once while it is being written, and then it closes', async () => {
  let written: (done: boolean) => void = vi.fn()
  const onwrite = vi.fn(() => new Promise<boolean>((resolve) => (written = resolve)))
  const onclose = vi.fn()
  const screen = await shown(onwrite, onclose)
  await screen.getByLabelText('Name').click()
  await userEvent.keyboard('{Enter}{Enter}')
  expect(onwrite).toHaveBeenCalledOnce()
  expect(onclose).not.toHaveBeenCalled()
  written(true)
  await expect.poll(() => onclose.mock.calls.length).toBe(1)
})

test('what could not be written stays open and says why', async () => {
  const onclose = vi.fn()
  const screen = await shown(() => Promise.resolve(false), onclose)
  await screen.getByRole('button', { name: 'Keep it' }).click()
  await screen.rerender({ error: { message: 'A name is missing.' } })
  await expect.element(screen.getByRole('alert')).toHaveTextContent('A name is missing.')
  await expect.element(screen.getByRole('button', { name: 'Keep it' })).toBeEnabled()
  expect(onclose).not.toHaveBeenCalled()
})
