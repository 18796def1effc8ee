import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import SpringNeap from './SpringNeap.svelte'

const frame = {
  labels: { spring: 'Spring rate', neap: 'Neap rate' },
  unit: 'm/s' as const,
  ...{ max: 6, step: 0.05, onspring: vi.fn(), onneap: vi.fn() },
}

test('neaps above springs are said to be wrong; without springs there is nothing to compare', async () => {
  const screen = await render(SpringNeap, { ...frame, spring: 0.5, neap: 0.9 })
  const neap = screen.getByLabelText('Neap rate')
  await expect.element(neap).toHaveAttribute('aria-invalid', 'true')
  await screen.rerender({ spring: 0.9 })
  await expect.element(neap).not.toHaveAttribute('aria-invalid', 'true')
  await screen.rerender({ spring: undefined })
  await expect.element(neap).not.toHaveAttribute('aria-invalid', 'true')
})
