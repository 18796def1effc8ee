import { expect, test, vi } from 'vitest'
import { render } from 'vitest-browser-svelte'
import FindingCard from './FindingCard.svelte'

test('a finding says its value, limit and margin, and shows its part', async () => {
  const onshow = vi.fn()
  const screen = await render(FindingCard, {
    finding: {
      rule: 'US-WA:cord-size',
      state: 'fails',
      part: 'release',
      what: 'The release cord is thicker than the most allowed.',
      actual: 4,
      limit: 3.2,
      margin: -0.8,
      unit: 'mm',
      standing: 'law',
      source: { title: 'A rule', date: '2026', confidence: 'read' },
    },
    partName: 'Show the release cord',
    onshow,
  })
  await expect.element(screen.getByRole('img', { name: 'Fails' })).toBeVisible()
  await expect.element(screen.getByText('−0.8 mm')).toBeVisible()
  await screen.getByRole('button', { name: 'Show the release cord' }).click()
  expect(onshow).toHaveBeenCalledOnce()
  await screen.getByRole('button', { name: /^Law/ }).click()
  await expect.element(screen.getByText('Read at the source')).toBeVisible()
})
