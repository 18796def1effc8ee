import type { Page } from 'playwright-core'

/** Goes to every place and every tab of it, filled by the demo, and hands each over by its name. */
export async function everyPlace(page: Page, look: (where: string) => Promise<void>): Promise<void> {
  await page.getByRole('button', { name: 'Puget Sound crew, feet and pounds' }).click()
  await page.getByText('This is the demo.').waitFor()
  const names = await page.getByRole('navigation', { name: 'Places' }).getByRole('button').allTextContents()
  if (names.length < 9) throw new Error(`only ${names.length} places were found`)
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
}
