import { mkdir, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import type { Locator, Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { editions, openApp, openPlainApp, type RunningApp } from './app'
import { axeInBothThemes } from './axe'

/* Two regions compared, a value of one's own put in place, the verdict changed by it, kept in a file, and removed. */

const go = (page: Page, place: string) =>
  page.getByRole('navigation').getByRole('button', { name: place, exact: true }).click()
const tab = (page: Page, name: string) => page.getByRole('tab', { name, exact: true }).click()
/** The way back that a notice offers for as long as it stands, so at once. */
const undo = (page: Page) => page.getByRole('status').getByRole('button', { name: 'Undo' }).last().click()
const legal = (page: Page) =>
  page.getByRole('region', { name: 'Verdicts' }).getByRole('heading').getByRole('button', { name: 'Legal' })
const volume = (page: Page) => page.getByRole('article', { name: /cubic foot|cubic feet/ })

async function onBench(page: Page): Promise<string> {
  await go(page, 'Bench')
  return (await legal(page).textContent()) ?? ''
}

/** "I checked this: a pot holds no more than 1 cubic foot." */
async function shadowVolume(page: Page): Promise<void> {
  await volume(page).getByRole('button', { name: 'I checked this' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByRole('spinbutton').fill('1')
  await dialog.getByLabel('Note', { exact: true }).fill('Asked at the counter.')
  await dialog.getByRole('button', { name: 'Use my rule' }).click()
  await dialog.waitFor({ state: 'hidden' })
}

/** What "Save as a file" writes. */
async function savedRules({ page, savedBy }: RunningApp, menu: Locator): Promise<void> {
  await menu.click()
  const file = await savedBy(() => page.getByRole('menuitem', { name: 'Save as a file' }).click())
  expect(JSON.parse(file.toString())).toMatchObject({
    region: 'US-WA',
    over: 'built-in',
    rules: [{ id: 'US-WA:volume' }],
  })
}

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)(
    'two regions compared, a value of one’s own that changes the verdict, saved as a file, and removed',
    async () => {
      const app = await openApp(edition)
      const { page } = app
      await page.getByLabel('Region', { exact: true }).selectOption({ label: 'Washington State' })
      await expect.poll(async () => (await legal(page).textContent()) ?? '').not.toContain('Fails')
      const before = await onBench(page)

      await go(page, 'Rulebook')
      await page.getByRole('heading', { name: 'Washington State' }).waitFor()
      expect(await axeInBothThemes(page)).toEqual([])
      await page.getByRole('button', { name: 'Set beside another region' }).click()
      await page.getByLabel('Add a region').selectOption({ label: 'Oregon' })
      const table = page.getByRole('table', { name: 'Rules side by side' })
      await table.getByRole('columnheader', { name: 'Oregon' }).waitFor()
      expect(await table.getByText('Differs').count()).toBeGreaterThan(1)
      // 6 1/4 in on one shore, 5 3/4 in on the next: what may be kept is set side by side as well.
      const crab = table.getByRole('row', { name: /^What may be kept.*Dungeness crab.*Differs/ })
      expect(await crab.textContent()).toMatch(/6 1\/4 in.*5 3\/4 in/)
      expect(await axeInBothThemes(page)).toEqual([])

      await tab(page, 'One region')
      await shadowVolume(page)
      await volume(page)
        .getByText(/^Yours, /)
        .waitFor()
      await expect.poll(() => onBench(page)).toContain('Fails')
      await legal(page).click()
      const finding = page.getByRole('article').filter({ hasText: 'Your own value' }).last()
      await finding.getByText('Yours', { exact: true }).waitFor()
      await finding.getByRole('button', { name: 'Read the rule' }).click()
      await volume(page).getByText('Note: Asked at the counter.').waitFor()

      await tab(page, 'Your own rules')
      const menu = page.getByRole('button', { name: 'What to do with your rules for Washington State' })
      await savedRules(app, menu)
      expect(await axeInBothThemes(page)).toEqual([])

      const remove = async () => {
        await menu.click()
        await page.getByRole('menuitem', { name: 'Remove your rules for Washington State' }).click()
        await page.getByRole('heading', { name: 'No rules of your own yet' }).waitFor()
      }
      await remove()
      await undo(page)
      await menu.waitFor()
      await expect.poll(() => onBench(page)).toContain('Fails')
      await go(page, 'Rulebook')
      await remove()
      await expect.poll(() => onBench(page)).toBe(before)
      expect(app.troubles).toEqual([])
    },
    180_000,
  )
})

// What is shown is the same in the window, so one edition tells.
describe('browser edition', () => {
  test('what may be kept is changed in a form, answers in the Gauge, goes and comes back', async () => {
    const app = await openPlainApp()
    const { page } = app
    await go(page, 'Rulebook')
    await page.getByRole('button', { name: /^Washington State/ }).click()
    const crab = page.getByRole('listitem', { name: 'Dungeness crab' }).first()
    const before = await crab.textContent()
    await crab.getByRole('button', { name: 'I checked this' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByRole('group', { name: 'Size limit 1' }).getByLabel('At least').fill('7')
    await dialog.getByLabel('Females').selectOption({ label: 'May be kept' })
    await dialog.getByLabel('Note', { exact: true }).fill('Sign at the slip.')
    expect(await axeInBothThemes(page)).toEqual([])
    await dialog.getByRole('button', { name: 'Use my entry' }).click()
    await dialog.waitFor({ state: 'hidden' })
    await crab.getByText(/^Yours, /).waitFor()
    await crab
      .getByText(/At least 7 in/)
      .first()
      .waitFor()
    await crab.getByRole('button', { name: /^Measure in the Gauge/ }).click()
    await page.getByLabel('Measured', { exact: true }).fill('165')
    await page.getByText(/smaller than 7 in/).waitFor()

    await go(page, 'Rulebook')
    await crab.getByRole('button', { name: 'Take my entry away' }).click()
    await page.getByText(/^Your entry for .* was taken away\.$/).waitFor()
    await undo(page)
    await crab
      .getByText(/At least 7 in/)
      .first()
      .waitFor()
    await crab.getByRole('button', { name: 'Take my entry away' }).click()
    await expect.poll(() => crab.textContent()).toBe(before)
    expect(app.troubles).toEqual([])
  }, 180_000)

  test('rules with a fault in them: a file at the start, and one brought in', async () => {
    const mine = {
      format: 'potwright/rules',
      version: 1,
      region: 'US-WA',
      name: 'Washington State',
      authority: 'Harbour office',
      checkedOn: '2026-11-25',
      own: true,
      over: 'built-in',
      zones: [],
      sources: [{ title: 'Your own note', kind: 'secondary' }],
      notFound: [],
      species: [],
    }
    const rule = {
      id: 'own-1',
      subject: 'rope',
      says: 'The rope is at least 8 mm thick.',
      standing: 'law',
      confidence: 'read',
      sources: [0],
    }
    const check = { op: 'min', quantity: 'rope.diameter', value: 8, unit: 'mm' }
    const file = (one: object) => JSON.stringify({ ...mine, rules: [{ ...rule, ...one }] })
    const app = await openPlainApp(async ({ dataFolder }) => {
      await mkdir(join(dataFolder, 'packs'), { recursive: true })
      await writeFile(
        join(dataFolder, 'packs', 'US-WA.rules.json'),
        file({ check: { ...check, op: 'roughly' } }),
      )
    })
    const { page } = app
    await go(page, 'Rulebook')
    await tab(page, 'Your own rules')
    await page.getByText(/US-WA\.rules\.json is not in use; the shipped rules .* rules\.0\.check/).waitFor()

    const bring = async (text: string) => {
      const [chooser] = await Promise.all([
        page.waitForEvent('filechooser'),
        page.getByRole('button', { name: 'Bring in from a file' }).click(),
      ])
      await chooser.setFiles({ name: 'mine.json', mimeType: 'application/json', buffer: Buffer.from(text) })
    }
    await bring(file({ check: { ...check, unit: 'kg' } }))
    await page.getByText(/mine\.json.*rules\.0\.check\.unit kg does not measure rope\.diameter/).waitFor()
    await bring(file({ check }))
    await page
      .getByRole('article', { name: rule.says })
      .getByText(/^Yours/)
      .waitFor()
    expect(app.troubles).toEqual([])
  })

  test('one pot against every region, and a crew counted with one more aboard', async () => {
    const app = await openPlainApp()
    const { page } = app
    await go(page, 'Rulebook')
    await tab(page, 'Where is this pot legal?')
    await page.getByRole('heading', { name: /^Where is “/ }).waitFor()
    const rows = page.getByRole('button', { name: /^Take this region to the Bench/ })
    expect(await rows.count()).toBeGreaterThanOrEqual(31)
    expect(await axeInBothThemes(page)).toEqual([])

    await tab(page, 'How many pots')
    await page.getByLabel('Region', { exact: true }).selectOption({ label: 'Washington State' })
    await page.getByLabel('Zone').selectOption({ label: 'Puget Sound' })
    await expect.poll(() => page.getByText('may be set in all').textContent()).toContain('2')
    await page.getByText('With one more person aboard, with a licence: 4').waitFor()
    await page.getByLabel('People aboard').fill('2')
    await page.getByLabel('Licences').fill('2')
    await expect.poll(() => page.getByText('may be set in all').textContent()).toContain('4')
    expect(await axeInBothThemes(page)).toEqual([])
    expect(app.troubles).toEqual([])
  })

  test('a crab is measured, and its gauge laid out at true size', async () => {
    const app = await openPlainApp()
    const { page } = app
    await go(page, 'Gauge')
    await page.getByLabel('Region').selectOption({ label: 'Washington State' })
    await page.getByLabel('Measured', { exact: true }).fill('159')
    await page.getByRole('radio', { name: 'Male', exact: true }).click()
    await page.getByText('Measure again', { exact: true }).waitFor()
    expect(await axeInBothThemes(page)).toEqual([])
    await page.getByRole('button', { name: 'Print at true size' }).click()
    await page.getByRole('img', { name: 'Ruler of 100 mm' }).waitFor()
    await page.keyboard.press('Escape')
    await page.getByRole('heading', { name: 'How many' }).first().waitFor()
    expect(app.troubles).toEqual([])
  })
})
