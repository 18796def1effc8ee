import { afterEach, expect, test } from 'vitest'
import { openApp, type RunningApp } from './app'
import { axeInBothThemes } from './axe'

/* Every place, filled by the demo, looked over in both themes; every tab of a place too. */

let app: RunningApp | undefined
afterEach(async () => {
  await app?.close().catch(() => undefined)
  app = undefined
})

test('no place has anything that axe objects to, in either theme', { timeout: 240_000 }, async () => {
  app = await openApp('browser')
  const { page } = app
  await page.getByRole('button', { name: 'Puget Sound crew, feet and pounds' }).click()
  await page.getByText('This is the demo.').waitFor()

  const names = await page.getByRole('navigation', { name: 'Places' }).getByRole('button').allTextContents()
  expect(names.length).toBeGreaterThanOrEqual(9)
  const found: string[] = []
  const look = async (where: string) => {
    for (const finding of await axeInBothThemes(page)) found.push(`${where}: ${finding}`)
  }
  for (const name of names.map((text) => text.trim())) {
    await page.getByRole('navigation', { name: 'Places' }).getByRole('button', { name, exact: true }).click()
    await page.getByRole('heading', { level: 1, name }).waitFor({ state: 'attached' })
    await page
      .getByRole('progressbar')
      .waitFor({ state: 'detached' })
      .catch(() => undefined)
    await look(name)
    // The Bench's first row of tabs is its drawers; the middle ones are those of the pot.
    const row = page.getByRole('main').getByRole('tablist').last()
    const tabs = (await row.count()) > 0 ? await row.getByRole('tab').all() : []
    for (const tab of tabs.slice(1)) {
      await tab.click()
      await look(`${name}, ${(await tab.textContent()) ?? ''}`)
    }
  }
  expect(found).toEqual([])
  expect(app.troubles).toEqual([])
})
