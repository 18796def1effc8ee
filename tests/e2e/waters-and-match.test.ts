import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { editions, openApp, openPlainApp } from './app'
import { axeInBothThemes } from './axe'

/* From a station to a pot: a water is made, its windows read, pots matched, one proposed and put on the Bench. */

const go = (page: Page, place: string) =>
  page.getByRole('navigation').getByRole('button', { name: place, exact: true }).click()

/** A water from its current station; unless told otherwise an inlet with little run. */
async function makeWater(
  page: Page,
  named = 'eagle harbor',
  station = /Entrance to Eagle Harbor/,
): Promise<void> {
  await go(page, 'Waters')
  await page.getByRole('button', { name: 'New water' }).click()
  const dialog = page.getByRole('dialog')
  await dialog.getByLabel('Name, town or water').fill(named)
  await dialog.getByRole('button', { name: station }).first().click()
  await dialog.getByLabel('Depth at chart datum').fill('8')
  await dialog.getByLabel('Bottom').selectOption('sand')
  await dialog.getByLabel('Region').selectOption('US-WA')
  await dialog.getByRole('switch', { name: /Take the height of tide from/ }).waitFor()
  await dialog.getByRole('button', { name: 'Make this water' }).click()
  await dialog.waitFor({ state: 'hidden' })
}

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)(
    'a water from a station, its windows, a match, and a proposed pot whose verdicts all hold',
    async () => {
      const app = await openApp(edition)
      const { page } = app
      await makeWater(page)
      await page.getByRole('heading', { name: 'Set it' }).waitFor()
      const picture = page.getByRole('slider', { name: /Tide and current at Entrance to Eagle Harbor/ })
      await picture.focus()
      await page.keyboard.press('ArrowRight')
      expect(await picture.getAttribute('aria-valuetext')).toMatch(
        /height .* m, depth .* m, (flood|ebb|slack)/,
      )
      expect(await page.getByText(/Licence/).count()).toBeGreaterThan(0)
      expect(await axeInBothThemes(page)).toEqual([])

      await page.getByRole('button', { name: /What to do with Entrance/ }).click()
      await page.getByRole('menuitem', { name: 'Use on the Bench' }).click()
      await go(page, 'Bench')
      // A day in season, and what the rules of the region ask about a trip, so that none of them stays open.
      await page.getByLabel('Date', { exact: true }).fill('2026-12-05')
      await page.getByRole('button', { name: 'More about the trip' }).click()
      await page.getByLabel('Somebody stays with the gear').selectOption('yes')
      await page.getByLabel('Tied to something fixed').selectOption('no')
      await page.getByLabel('Set from').fill('09:00')
      await page.getByLabel('Hauled by').fill('15:00')
      await page.keyboard.press('Escape')

      await go(page, 'Match')
      const cells = page.getByRole('button', {
        name: /^[^,]+, Entrance to Eagle Harbor\. (Holds|Close|Fails)/,
      })
      await expect.poll(() => cells.count(), { timeout: 30_000 }).toBeGreaterThanOrEqual(3)
      expect(await axeInBothThemes(page)).toEqual([])
      await cells.first().click()
      await page.getByRole('button', { name: 'See its tide' }).click()
      await page.getByRole('heading', { name: 'Set it' }).waitFor()

      await go(page, 'Match')
      await page.getByRole('tab', { name: 'Propose a pot' }).click()
      await page.getByLabel('Crab sought').selectOption('metacarcinus-magister')
      await page.getByLabel('Soak').fill('3')
      await page.getByRole('button', { name: 'Propose', exact: true }).click()
      await page.getByRole('heading', { name: 'Lightest' }).waitFor({ timeout: 60_000 })
      expect(await axeInBothThemes(page)).toEqual([])
      await page.getByRole('button', { name: 'Put on the Bench' }).click()

      const verdicts = page.getByRole('region', { name: 'Verdicts' })
      for (const name of ['Legal', 'Holds bottom', 'Float shows', 'Lifts', 'Fishes', 'Stows'])
        await expect
          .poll(() => verdicts.getByRole('button', { name }).first().textContent(), { timeout: 20_000 })
          .toMatch(/Holds(?! bottom)/)
      expect(await page.getByLabel('Name of the design').inputValue()).toMatch(/proposed$/)
      expect(app.troubles).toEqual([])
    },
    180_000,
  )
})

// What is shown is the same in the window, so one edition tells.
describe('browser edition', () => {
  test('a match sorted, sifted and pinned; a cell opened to its tide; the ring that each channel needs', async () => {
    const app = await openPlainApp()
    const { page } = app
    await makeWater(page)
    await makeWater(page, 'admiralty inlet', /Admiralty Inlet/)
    await go(page, 'Match')
    const table = page.getByRole('table', { name: 'Every design against every water' })
    const designs = table.getByRole('rowheader')
    const named = async () => (await designs.allTextContents()).map((text) => text.trim())
    const channel = table.getByRole('columnheader', { name: /Admiralty Inlet/ })
    await channel.waitFor({ timeout: 60_000 })
    const cells = table.getByRole('button', { name: / of the tide / })
    await expect.poll(() => cells.count(), { timeout: 60_000 }).toBe((await designs.count()) * 2)

    // Best at the channel first: the share of the tide falls from row to row.
    const shelf = await named()
    await channel.getByRole('button').click()
    await expect.poll(() => channel.getAttribute('aria-sort')).toBe('descending')
    const shares = async () =>
      (await table.getByRole('button', { name: /, Admiralty Inlet/ }).allTextContents()).map((text) =>
        Number(/(\d+) % of the tide/.exec(text)?.[1] ?? 0),
      )
    const sorted = await named()
    expect(sorted).not.toEqual(shelf)
    expect([...sorted].sort()).toEqual([...shelf].sort())
    const lawful = (await table.getByRole('button', { name: /, Admiralty Inlet/ }).allTextContents()).map(
      (text) => /Legal: (\w+)/.exec(text)?.[1],
    )
    const alike = (await shares()).filter((_, at) => lawful[at] === lawful[0])
    expect(alike).toEqual([...alike].sort((a, b) => b - a))

    // The last comes to the top when it is pinned, and back when it is not.
    const last = sorted.at(-1) ?? ''
    const pin = table.getByRole('button', { name: `Keep ${last} on top` })
    await pin.click()
    await expect.poll(async () => (await named())[0]).toBe(last)
    await pin.click()
    await expect.poll(named).toEqual(sorted)

    // Nothing holds in that channel all the time; all do in the inlet.
    await page.getByRole('radio', { name: 'Holds everywhere' }).check({ force: true })
    await table.getByText('No design fits the name and the filter.').waitFor()
    await page.getByRole('radio', { name: 'Holds somewhere' }).check({ force: true })
    await expect.poll(named).toEqual(sorted)
    await page.getByLabel('Designs named').fill('heavy')
    await expect.poll(named).toEqual(['Heavy channel round'])
    expect(await axeInBothThemes(page)).toEqual([])

    await table.getByRole('button', { name: /^Heavy channel round, Admiralty Inlet/ }).click()
    const detail = page.getByRole('complementary', { name: 'One design at one water' })
    await detail.getByText(/the strongest current here is/).waitFor()
    await detail.getByRole('button', { name: 'See its tide' }).click()
    await page.getByRole('slider', { name: /Tide and current at Admiralty Inlet/ }).waitFor()
    expect(await page.getByLabel('Pot', { exact: true }).inputValue()).toBe('starter-heavy')

    await go(page, 'Match')
    await page.getByRole('tab', { name: 'How heavy a ring' }).click()
    await page.getByLabel('Design', { exact: true }).selectOption({ label: 'Compact folding round' })
    const rings = page.getByRole('table', { name: 'How heavy a base ring Compact folding round needs' })
    await rings.getByRole('row', { name: /Eagle Harbor.* mm .* kg/ }).waitFor({ timeout: 60_000 })
    await rings
      .getByRole('row', { name: /Admiralty Inlet.* (Not even the thickest bar|mm .* more)/ })
      .waitFor()
    expect(await axeInBothThemes(page)).toEqual([])
    expect(app.troubles).toEqual([])
  }, 240_000)

  test('a water taken away comes back by undo, and bad places are said plainly', async () => {
    const app = await openPlainApp()
    const { page } = app
    await makeWater(page)
    await page.getByRole('tab', { name: 'About this water' }).click()
    await page.getByLabel('Depth at chart datum').fill('0')
    await page.getByRole('tab', { name: 'Tide and current' }).click()
    await page.getByText('This place dries at low water in the time shown.').waitFor()

    await page.getByRole('button', { name: /What to do with Entrance/ }).click()
    await page.getByRole('menuitem', { name: 'Remove' }).click()
    await page.getByRole('heading', { name: 'No water yet' }).waitFor()
    await page.getByRole('button', { name: 'Undo' }).click()
    await page.getByRole('heading', { name: 'Entrance to Eagle Harbor' }).waitFor()

    await page.getByRole('button', { name: 'New water' }).click()
    const dialog = page.getByRole('dialog')
    await dialog.getByLabel('Latitude').fill('46.8')
    await dialog.getByLabel('Longitude').fill('8.2')
    await dialog.getByText(/The nearest current station, .* km away/).waitFor()
    expect(await axeInBothThemes(page)).toEqual([])
    await dialog.getByRole('button', { name: 'Make this water' }).click()
    await dialog.getByText('Give the depth at chart datum, from the chart or a lead line.').waitFor()
    expect(app.troubles).toEqual([])
  })
})
