import { mkdir, readFile, rm, writeFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import type { Page } from 'playwright-core'
import { expect, test } from 'vitest'
import { openPlainApp } from './app'
import { chooseFile, dropFile, onePixel } from './files'

/* The Workshop: a figure of one's own changes a verdict, and a backup brings back what was spoilt. */

const open = async (page: Page, place: string, tab?: string) => {
  await page.getByRole('navigation').getByRole('button', { name: place, exact: true }).click()
  if (tab) await page.getByRole('tab', { name: tab }).click()
}
const holds = (page: Page) =>
  page.getByRole('region', { name: 'Verdicts' }).getByRole('button', { name: 'Holds bottom' }).textContent()

test('less grip on sand turns the verdict, is kept, and is put back', async () => {
  const app = await openPlainApp()
  let { page } = app
  await page.getByRole('button', { name: 'Skip this' }).click()
  const before = await holds(page)
  await open(page, 'Workshop')
  await page.getByLabel('Grip on sand, low').fill('0.05')
  await page.getByLabel('Grip on sand, likely').fill('0.1')
  await page.keyboard.press('Tab')
  await open(page, 'Bench')
  await expect.poll(() => holds(page)).toContain('Fails')

  page = await app.restart()
  await expect.poll(() => holds(page)).toContain('Fails')
  await open(page, 'Workshop')
  await page.getByRole('button', { name: 'Put Grip on sand back as shipped' }).click()
  await open(page, 'Bench')
  await expect.poll(() => holds(page)).toBe(before)
  expect(app.troubles).toEqual([])
})

test('lead of one’s own weighs what its row says', async () => {
  const app = await openPlainApp()
  const { page } = app
  await open(page, 'Workshop', 'Materials and prices')
  await page.getByRole('button', { name: 'Add a row' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Name').fill('Old bridge steel')
  await dialog.getByRole('button', { name: 'Keep it' }).click()
  // A row without its density is refused by name, and nothing is kept.
  await dialog.getByText('densityKgM3').waitFor()
  await dialog.getByLabel('Density').fill('7400')
  await dialog.getByRole('checkbox', { name: 'frame' }).check()
  await dialog.getByRole('button', { name: 'Keep it' }).click()
  await page.getByRole('rowheader', { name: 'old-bridge-steel' }).waitFor()
  await open(page, 'Bench')
  await page.getByRole('tab', { name: /^Frame/ }).click()
  const material = page.getByRole('region', { name: 'Base ring' }).getByLabel('Material')
  await material.selectOption({ label: 'Old bridge steel' })
  expect(await material.inputValue()).toBe('old-bridge-steel')
  expect(app.troubles).toEqual([])
})

test('a backup shows what it would change, puts it back, and everything leaves as one file', async () => {
  const app = await openPlainApp()
  const { page, dataFolder } = app
  const photo = join(dataFolder, 'photos', 'eye.png')
  await mkdir(dirname(photo), { recursive: true })
  await writeFile(photo, onePixel)
  await page.getByLabel('Name of the design').fill('Good pot')
  await expect.poll(() => page.getByText('Saved', { exact: true }).isVisible()).toBe(true)
  await open(page, 'Workshop', 'Backup and moving')
  await page.getByRole('button', { name: 'Make a backup now' }).click()
  await page.getByText('A backup was made.').waitFor()
  await open(page, 'Bench')
  await page.getByLabel('Name of the design').fill('Spoilt pot')
  await expect.poll(() => page.getByText('Saved', { exact: true }).isVisible()).toBe(true)

  await open(page, 'Workshop', 'Backup and moving')
  await page.getByRole('row').filter({ hasText: 'By hand' }).getByRole('button').click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('cell', { name: 'Good pot' }).waitFor()
  await dialog.getByRole('button', { name: 'Put everything back' }).click()
  await page.getByText(/^Put back as they were then: 1 design/).waitFor()
  await page.getByRole('row').filter({ hasText: 'Before a restore' }).waitFor()
  const everything = await app.savedBy(() =>
    page.getByRole('button', { name: 'Save everything as a file' }).click(),
  )
  await rm(photo)
  await chooseFile(page, page.getByRole('button', { name: 'Bring in such a file' }), {
    name: 'everything.zip',
    mimeType: 'application/zip',
    buffer: everything,
  })
  await dialog.getByText('Would add 1 photo.').waitFor()
  await dialog.getByRole('button', { name: 'Only what is missing here' }).click()
  await page.getByText('Added 1 photo. The state before is kept as a backup.').waitFor()
  expect(await readFile(photo)).toEqual(onePixel)
  await open(page, 'Bench')
  await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('Good pot')
  await dropFile(page, 'everything.backup.zip', everything)
  await dialog.getByRole('heading', { name: /everything\.backup\.zip/ }).waitFor()
  expect(app.troubles).toEqual([])
})
