import type { Page } from 'playwright-core'
import { afterEach, describe, expect, test } from 'vitest'
import { editions, openApp, type RunningApp } from './app'

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

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  let app: RunningApp | undefined
  afterEach(async () => {
    await app?.close().catch(() => undefined)
    app = undefined
  })

  test.skipIf(missing)(
    'a heavier ring turns fails into holds, a region finds a fault, and all is kept',
    async () => {
      app = await openApp(edition)
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

      await page.getByLabel('Region').selectOption({ label: 'New South Wales' })
      await expect.poll(() => words(page, 'Legal')).toContain('Fails')
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

  test.skipIf(missing)('a design taken off the shelf comes back by undo', async () => {
    app = await openApp(edition)
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

  test.skipIf(missing)('a file that is no design is refused by name, and nothing changes', async () => {
    app = await openApp(edition)
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
    await expect.poll(() => page.getByRole('status').first().textContent()).toContain('strange.json')
    expect(await page.getByRole('status').first().textContent()).toContain('body.baseDiameterMm')
    await page.keyboard.press('Escape')
    expect(await page.getByLabel('Name of the design').inputValue()).toBe('Standard round')
    expect(app.troubles).toEqual([])
  })
})
