import { readdir } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import { editions, openApp, openPlainApp } from './app'
import { axeInBothThemes } from './axe'

/* A stranger's first minutes: the first steps, the tour, the demo and back out of it. */

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)('the demo is shown, outlives a restart, and leaves nothing behind', async () => {
    const app = await openApp(edition)
    let { page } = app
    await page.getByLabel('Name of the design').fill('My own pot')
    await expect.poll(() => page.getByText('Saved', { exact: true }).isVisible()).toBe(true)
    await page.keyboard.press('Control+k')
    await page.keyboard.type('Demo: Puget')
    await page.keyboard.press('Enter')
    await page.getByText('This is the demo.').waitFor()
    expect(await page.getByLabel('Name of the design').inputValue()).toBe('Sound pot')
    await page.getByRole('button', { name: 'Locker', exact: true }).click()
    await page.getByText('Channel pot').first().waitFor()

    page = await app.restart()
    await page.getByText('This is the demo.').waitFor()
    await page.getByRole('button', { name: 'Remove the demo' }).click()
    await page.getByText('This is the demo.').waitFor({ state: 'detached' })
    await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('My own pot')
    expect(await readdir(app.home)).not.toContain('demo')
    expect((await readdir(join(app.dataFolder, 'pots'))).filter((name) => name.includes('demo'))).toEqual([])
    expect(app.troubles).toEqual([])
  })
})

test('the first steps are offered once, and the tour points at what is there', async () => {
  const app = await openPlainApp()
  let { page } = app
  await page.getByRole('heading', { name: 'Where to start' }).waitFor()
  expect(await axeInBothThemes(page)).toEqual([])
  await page.getByRole('button', { name: 'Show me round' }).click()
  for (const title of ['The parts', 'Where, when and who', 'The pot itself', 'Six verdicts']) {
    await page.getByRole('dialog', { name: title }).waitFor()
    await expect.poll(() => page.locator('div.ring').count()).toBe(1)
    await page.keyboard.press('ArrowRight')
  }
  await page.getByRole('dialog', { name: 'The round of a season' }).waitFor()
  expect(await axeInBothThemes(page)).toEqual([])
  await page.keyboard.press('Escape')
  await page.getByRole('dialog').waitFor({ state: 'detached' })

  page = await app.restart()
  await page.getByRole('button', { name: 'Shelf' }).waitFor()
  expect(await page.getByRole('heading', { name: 'Where to start' }).count()).toBe(0)
  await page.keyboard.press('Control+k')
  await page.keyboard.type('Show me round')
  await page.keyboard.press('Enter')
  await page.getByRole('dialog', { name: 'The parts' }).waitFor()
  expect(app.troubles).toEqual([])
})

test('a shape chosen in the first steps lies on the Bench, and help stands beside its parts', async () => {
  const app = await openPlainApp()
  const { page } = app
  await page.getByRole('button', { name: 'Start from a shape' }).click()
  await page.getByRole('dialog').getByRole('button', { name: 'Cone with top entrance' }).click()
  await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('Cone with top entrance')
  expect(await page.getByRole('heading', { name: 'Where to start' }).count()).toBe(0)
  await page.getByRole('tab', { name: /^Bridle/ }).click()
  await page.getByRole('button', { name: 'About bridle' }).click()
  await page.getByText('never opposite one').waitFor()
  expect(app.troubles).toEqual([])
})
