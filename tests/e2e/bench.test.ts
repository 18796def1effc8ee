import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { editions, openApp, openPlainApp } from './app'

/* The first job from end to end: start from a shape, see it fail, mend it, hold it against a region, find it again. */

const verdict = (page: Page, name: string) =>
  page.getByRole('region', { name: 'Verdicts' }).getByRole('button', { name })

async function words(page: Page, name: string): Promise<string> {
  return (await verdict(page, name).textContent()) ?? ''
}

async function startFrom(page: Page, shape: string): Promise<void> {
  await page.getByRole('button', { name: 'Shelf' }).click()
  await page.getByRole('dialog').getByRole('button', { name: shape }).click()
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
}

async function openPart(page: Page, name: string) {
  await page.getByRole('tab', { name: new RegExp(`^${name}`) }).click()
  return page.getByRole('tabpanel', { name: new RegExp(`^${name}`) })
}

/** How much is written over the pot, in pixels of the sheet that lies on the view. */
const writtenOver = (page: Page) =>
  page.getByRole('img', { name: /Base ring/ }).evaluate((view) => {
    const [, sheet] = view.querySelectorAll('canvas')
    const pixels = sheet?.getContext('2d')?.getImageData(0, 0, sheet.width, sheet.height).data
    return pixels?.filter((value, at) => at % 4 === 3 && value > 0).length ?? 0
  })

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)(
    'a heavier ring turns fails into holds, a region finds a fault, and all is kept',
    async () => {
      const app = await openApp(edition)
      let { page } = app
      await startFrom(page, 'Compact folding round')
      const ballast = await openPart(page, 'Ballast')
      await ballast.getByRole('button', { name: 'Remove lead' }).click()
      await page.getByLabel('Current', { exact: true }).fill('0.345')
      const frame = await openPart(page, 'Frame')
      const ring = frame.getByRole('region', { name: 'Base ring' }).getByRole('slider')

      await ring.fill('6')
      await expect.poll(() => words(page, 'Holds bottom')).toContain('Fails')
      await ring.fill('12')
      await expect.poll(() => words(page, 'Holds bottom')).toContain('Holds')

      await page.getByRole('button', { name: 'Undo' }).click()
      await expect.poll(() => ring.inputValue()).not.toBe('12')
      await page.keyboard.press('Control+y')
      await expect.poll(() => ring.inputValue()).toBe('12')

      const unmarked = await writtenOver(page)
      await page.getByLabel('Region').selectOption({ label: 'New South Wales' })
      await expect.poll(() => words(page, 'Legal')).toContain('Fails')
      await page.getByRole('img', { name: /Marked as failing: [^.]*netting/ }).waitFor()
      await expect.poll(() => writtenOver(page)).toBeGreaterThan(unmarked)
      await verdict(page, 'Legal').click()
      await page.getByRole('button', { name: 'Show the netting' }).first().click()
      await expect
        .poll(() => page.getByRole('tab', { name: /^Netting/ }).getAttribute('aria-selected'))
        .toBe('true')

      await page.getByLabel('Name of the design').fill('Narrows pot')
      await expect.poll(() => page.getByText('Saved', { exact: true }).isVisible()).toBe(true)
      page = await app.restart()
      await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('Narrows pot')
      await expect.poll(() => words(page, 'Legal')).toContain('Fails')
      const again = await openPart(page, 'Frame')
      expect(await again.getByRole('region', { name: 'Base ring' }).getByRole('slider').inputValue()).toBe(
        '12',
      )
      expect(app.troubles).toEqual([])
    },
  )
})

// What is shown is the same in the window, so one edition tells.
describe('browser edition', () => {
  test('what cannot be told leads to what is missing', async () => {
    const app = await openPlainApp()
    const { page } = app
    await startFrom(page, 'Standard round')
    const verdicts = page.getByRole('region', { name: 'Verdicts' })
    await verdicts.getByRole('button', { name: 'Choose the region' }).first().click()
    const focused = () =>
      page.evaluate(() => document.activeElement?.closest('[data-field]')?.getAttribute('data-field'))
    await expect.poll(focused).toBe('region')
    await page.getByLabel('Region').selectOption({ label: 'Washington State' })

    await verdicts.getByRole('button', { name: 'Choose the crab' }).click()
    await expect.poll(focused).toBe('species')
    await page.getByLabel('Crab sought').selectOption({ label: 'Dungeness crab' })
    await page.keyboard.press('Escape')
    await expect.poll(() => words(page, 'Fishes')).not.toContain('Cannot tell')

    await verdicts.getByRole('button', { name: 'Give the space' }).click()
    await page.getByRole('button', { name: 'Car boot' }).click()
    await expect.poll(() => words(page, 'Stows')).toContain('Holds')
    expect(app.troubles).toEqual([])
  })

  test('a size that cannot be is named at its field, and the design stays', async () => {
    const app = await openPlainApp()
    const { page } = app
    await startFrom(page, 'Standard round')
    const entrances = await openPart(page, 'Entrances')
    const width = entrances.getByRole('spinbutton', { name: 'Width' }).first()
    for (const wrong of ['-5', 'NaN', '']) {
      await width.fill(wrong)
      await width.blur()
      await expect.poll(() => entrances.getByRole('alert').textContent()).toContain('It stays at 300 mm')
    }
    await width.fill('1200')
    await width.blur()
    await entrances.getByText('This entrance is 1200 mm wide; the pot is 895 mm there.').waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await expect.poll(() => width.inputValue()).toBe('300')

    const rope = await openPart(page, 'Rope')
    await rope.getByRole('spinbutton', { name: 'Length' }).fill('6')
    await expect.poll(() => words(page, 'Float shows')).toContain('Fails')
    await verdict(page, 'Float shows').click()
    await page.getByText(/The rope is 6 m; at high water the depth here asks for/).waitFor()
    expect(app.troubles).toEqual([])
  })

  test('a design taken off the shelf comes back by undo', async () => {
    const app = await openPlainApp()
    const { page } = app
    await startFrom(page, 'Cone with top entrance')
    await page.getByRole('button', { name: 'Shelf' }).click()
    await page.getByRole('button', { name: 'What to do with Cone with top entrance' }).click()
    await page.getByRole('menuitem', { name: 'Remove' }).click()
    await page.getByRole('dialog').getByRole('status').getByRole('button', { name: 'Undo' }).click()
    await page.keyboard.press('Escape')
    await expect.poll(() => page.getByLabel('Name of the design').inputValue()).toBe('Cone with top entrance')
    expect(app.troubles).toEqual([])
  })

  test('a file that is no design is refused by name, and nothing changes', async () => {
    const app = await openPlainApp()
    const { page } = app
    await startFrom(page, 'Standard round')
    await page.getByRole('button', { name: 'Shelf' }).click()
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Bring in from a file' }).click(),
    ])
    const wrong = {
      format: 'potwright/pot',
      version: 1,
      id: 'x',
      name: 'x',
      gearKind: 'pot',
      body: { shape: 'round' },
    }
    await chooser.setFiles({
      name: 'strange.json',
      mimeType: 'application/json',
      buffer: Buffer.from(JSON.stringify(wrong)),
    })
    const notice = page.getByRole('status').filter({ hasText: 'strange.json' }).first()
    await expect.poll(() => notice.textContent()).toContain('body.baseDiameterMm')
    await page.keyboard.press('Escape')
    expect(await page.getByLabel('Name of the design').inputValue()).toBe('Standard round')
    expect(app.troubles).toEqual([])
  })
})
