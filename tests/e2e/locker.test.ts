import { appendFile, readdir } from 'node:fs/promises'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { describe, expect, test } from 'vitest'
import { editions, openApp, openPlainApp } from './app'
import { ask } from './ask'
import { axeInBothThemes } from './axe'
import { chooseFile, onePixel } from './files'

/* The round of owned gear: add pots, set them, haul them, miss one, find a rope worn, replace it; and bad input. */

const dozen = Array.from({ length: 12 }, (_, i) => String(i + 1))

async function go(page: Page, place: string): Promise<void> {
  const places = page.getByRole('navigation', { name: 'Places' })
  await places.getByRole('button', { name: place, exact: true }).click()
  await page.getByRole('heading', { level: 1, name: place }).waitFor({ state: 'attached' })
}

async function addPots(page: Page, numbers: string): Promise<void> {
  await go(page, 'Locker')
  await page.getByRole('button', { name: 'Add pots' }).click()
  await page.getByLabel('Numbers on the floats').fill(numbers)
  await page
    .getByRole('dialog')
    .getByRole('button', { name: /^Add \d+ pot/ })
    .click()
  await page.getByRole('dialog').waitFor({ state: 'hidden' })
}

/** Hauls by keyboard alone: the number, Enter, what came up, Enter. */
async function haul(page: Page, number: string, keys = 'k'): Promise<void> {
  await page.getByLabel('Float number').fill(number)
  await page.keyboard.press('Enter')
  await page.getByRole('region', { name: `What came up in ${number}`, exact: true }).waitFor()
  for (const key of keys) await page.keyboard.press(key)
  await page.keyboard.press('Enter')
  await page.getByLabel('Float number').waitFor()
}

async function choose(page: Page, button: string, name: string, text: string): Promise<void> {
  const file = { name, mimeType: 'text/csv', buffer: Buffer.from(text) }
  await chooseFile(page, page.getByRole('button', { name: button }), file)
}

const state = async (page: Page) => {
  const answer = (await ask(page, 'locker:state', {})) as {
    value: { state: { pots: Record<string, { number: string; status: string }>; problems: unknown[] } }
  }
  return answer.value.state
}

describe.each(editions)('$edition edition', ({ edition, missing }) => {
  test.skipIf(missing)(
    'a dozen pots are set and hauled, one is missed, a bad rope turns the picture and is replaced',
    { timeout: 120_000 },
    async () => {
      const app = await openApp(edition)
      let { page } = app
      await addPots(page, '1-12')
      await page.getByText('12 pots', { exact: true }).waitFor()

      await go(page, 'Runs')
      await page.getByLabel('Float number').fill('1-12')
      await page.keyboard.press('Enter')
      await page.getByText('0 of 12 up').waitFor()
      await page.keyboard.press('Escape')
      await page.getByRole('radio', { name: 'Hauling' }).focus()
      await page.keyboard.press('Space')
      for (const number of dozen.filter((one) => one !== '7')) await haul(page, number, 'kkub')

      const passed = page.getByRole('region', { name: 'A float was passed by' })
      await passed.getByRole('button', { name: 'Haul 7' }).waitFor()
      await page.getByText('11 of 12 up').waitFor()
      expect(await axeInBothThemes(page)).toEqual([])

      await go(page, 'Locker')
      await page
        .getByRole('region', { name: 'Pots owned' })
        .getByRole('button', { name: /^3, Ashore/ })
        .click()
      const picture = page.getByRole('region', { name: 'Pot 3' }).getByRole('img')
      await expect.poll(() => picture.getAttribute('aria-label')).toMatch(/sound/)
      expect(await picture.getAttribute('aria-label')).not.toMatch(/worn out/)
      await page.getByRole('button', { name: 'Inspect the rope' }).click()
      await page.getByRole('radio', { name: /Any reason to discard it/ }).press('Space')
      await page.getByRole('button', { name: 'Write down' }).click()
      await expect.poll(() => picture.getAttribute('aria-label')).toMatch(/worn out/)

      await go(page, 'Season')
      const card = page.getByRole('article').filter({ hasText: 'Replace the rope on 1 pot' })
      await card.getByText('The last inspection found a reason to discard it.').waitFor()
      await page.getByRole('tab', { name: /^To buy/ }).click()
      await expect.poll(() => page.getByRole('row', { name: /^Rope/ }).count()).toBe(1)
      await page.getByRole('tab', { name: /^To do/ }).click()
      await card.getByRole('button', { name: 'Done: rope of pot 3' }).click()
      await expect.poll(() => card.count()).toBe(0)

      await go(page, 'Locker')
      await expect.poll(() => picture.getAttribute('aria-label')).not.toMatch(/worn out/)
      page = await app.restart()
      await go(page, 'Runs')
      await page.getByRole('region', { name: 'A float was passed by' }).waitFor()
      expect(app.troubles).toEqual([])
    },
  )
})

// What is shown is the same in the window, so one edition tells.
describe('browser edition', () => {
  test('a worn rope and growth go with a pot to the Bench, and are taken off there', async () => {
    const app = await openPlainApp()
    const { page } = app
    await addPots(page, '5')
    await page.getByRole('button', { name: 'Inspect the rope' }).click()
    await page.getByRole('radio', { name: /stiff or flat/ }).press('Space')
    await page.getByRole('button', { name: 'Write down' }).click()
    await page.getByText('Rope of pot 5 looked at.').waitFor()
    await page
      .getByText(/Strength left/)
      .first()
      .waitFor()
    await page.getByRole('button', { name: 'Check as it is now' }).click()
    await page.getByText('Checked as pot 5 is now: rope at').waitFor()
    await page.getByRole('button', { name: 'Check as new' }).click()
    await expect.poll(() => page.getByText(/Checked as pot 5/).count()).toBe(0)
    expect(app.troubles).toEqual([])
  })

  test('what does not fit is refused with its reason, and the rest is kept', async () => {
    const app = await openPlainApp()
    const { page } = app
    await addPots(page, '1-3')

    await page.getByRole('button', { name: 'Add pots' }).click()
    await page.getByLabel('Numbers on the floats').fill('3-5')
    expect(await page.getByRole('dialog').getByRole('alert').textContent()).toContain(
      'The number 3 is on another pot',
    )
    await page.getByLabel('Numbers on the floats').fill('5-4')
    expect(await page.getByRole('dialog').getByRole('alert').textContent()).toContain('runs backwards')
    await page.keyboard.press('Escape')

    await go(page, 'Runs')
    await page.getByRole('radio', { name: 'Hauling' }).check({ force: true })
    await page.getByLabel('Float number').fill('2')
    await page.getByText('Pot 2 is not in the water, so it cannot be hauled.').waitFor()

    await page.getByRole('button', { name: 'Bring in a day card' }).click()
    const card = [
      'Float,Date,Set,Hauled,Kept,Undersized',
      '1,2026-05-02,06:10,12:20,4,1',
      '9,2026-05-02,06:15,12:30,2,0',
      '2,2026-05-02,06:20,12:40,many,0',
      '3,2026-05-02,06:30,,,',
    ].join('\n')
    await choose(page, 'Choose a file', 'card.csv', card)
    await page.getByText('There is no pot with the number 9.').waitFor()
    await page.getByText(/Line 4/).waitFor()
    // The pots were added today: what is older than they are is refused by its line, and nothing is written.
    await page.getByRole('button', { name: 'Write down 2 rows' }).click()
    await expect
      .poll(() => page.getByRole('dialog').getByRole('alert').textContent())
      .toMatch(/Line 2: Nothing was written/)
    await page.keyboard.press('Escape')
    expect((await state(page)).problems).toEqual([])

    await go(page, 'Locker')
    await page.getByRole('button', { name: 'Bring in a list' }).click()
    const list = [
      'Pot;Component;Made of;Size;Bought',
      'A1;rope;PP;8;2025-04-01',
      'A1;netting;PE;2;2025-04-01',
      'A2;rope;PP;thick;2025-04-01',
      '2;rope;PP;8;2025-04-01',
    ].join('\n')
    await choose(page, 'Choose a file', 'gear.csv', list)
    await page.getByText('Pot A1: rope, netting').waitFor()
    await page.getByText('2 rows left out').waitFor()
    expect(await axeInBothThemes(page)).toEqual([])
    await page.getByRole('button', { name: 'Add 1 pot', exact: true }).click()
    await expect
      .poll(async () => Object.values((await state(page)).pots).map(({ number }) => number))
      .toContain('A1')

    await page.getByRole('button', { name: 'Tables' }).click()
    const table = await app.savedBy(() =>
      page.getByRole('menuitem', { name: 'Parts, for a spreadsheet' }).click(),
    )
    expect(table.toString()).toMatch(/^number,part,material.*\n[\s\S]*A1,netting,PE/)
    expect(app.troubles).toEqual([])
  })

  test('any entry can be corrected, taken back and brought back', async () => {
    const app = await openPlainApp()
    const { page } = app
    await addPots(page, '1-2')
    await go(page, 'Runs')
    await page.getByLabel('Float number').fill('1-2')
    await page.keyboard.press('Enter')
    await page.getByText('0 of 2 up').waitFor()
    await page.getByRole('radio', { name: 'Hauling' }).check({ force: true })
    await haul(page, '1', 'kkk')
    await page.getByRole('button', { name: 'Correct the haul of 1' }).click()
    await page.getByRole('dialog').getByLabel('Kept').fill('2')
    await page.getByRole('dialog').getByRole('button', { name: 'Correct' }).click()
    await page.getByText('2 kept', { exact: true }).waitFor()

    await go(page, 'Locker')
    await page.getByRole('button', { name: 'All that happened' }).click()
    const line = page.getByRole('dialog').getByRole('listitem').filter({ hasText: 'Hauled Pot 1' })
    await line.getByRole('button', { name: 'Take back' }).click()
    await expect.poll(async () => Object.values((await state(page)).pots)[0]?.status).toBe('in-water')
    await page.getByRole('dialog').getByRole('button', { name: 'Bring back' }).click()
    await expect.poll(async () => Object.values((await state(page)).pots)[0]?.status).toBe('ashore')
    expect(app.troubles).toEqual([])
  })

  test('a second machine’s file that appears and grows is seen at once', async () => {
    const app = await openPlainApp()
    const { page, dataFolder } = app
    await addPots(page, '1-2')
    const [pot = ''] = Object.keys((await state(page)).pots)
    const file = join(dataFolder, 'journal', 'hire-boat.jsonl')
    const line = (seq: number, body: object) =>
      `${JSON.stringify({ version: 1, id: `hire-${seq}`, machine: 'hire-boat', seq, at: new Date().toISOString(), ...body })}\n`
    const first = page.getByRole('region', { name: 'Pots owned' }).getByRole('button', { name: /^1, / })
    await expect.poll(() => first.textContent()).toContain('Ashore')
    await appendFile(file, line(1, { kind: 'set', pot }))
    await expect.poll(() => first.textContent(), { timeout: 20_000 }).toContain('In the water')
    await appendFile(file, line(2, { kind: 'haul', pot, kept: 3 }))
    await page.getByText('3 kept, 0 undersized so far').waitFor()
    expect(app.troubles).toEqual([])
  })

  test(
    'a photo is added at an inspection, shown there, and lies in the data folder',
    { timeout: 120_000 },
    async () => {
      const app = await openPlainApp()
      const { page, dataFolder } = app
      await addPots(page, '4')
      await page.getByRole('button', { name: 'Inspect the rope' }).click()
      const dialog = page.getByRole('dialog', { name: 'Look at the rope of pot 4' })
      await chooseFile(page, dialog.getByRole('button', { name: 'Add a photo' }), {
        name: 'not a photo.jpg',
        mimeType: 'image/jpeg',
        buffer: Buffer.from('words'),
      })
      await page.getByText('not a photo.jpg is not a photo that can be read.').first().waitFor()
      await chooseFile(page, dialog.getByRole('button', { name: 'Add a photo' }), {
        name: 'eye.png',
        mimeType: 'image/png',
        buffer: onePixel,
      })
      await dialog.getByRole('button', { name: 'Show larger: Rope' }).click()
      await page
        .getByRole('dialog', { name: 'Rope', exact: true })
        .getByRole('img', { name: 'Rope' })
        .waitFor()
      await page.keyboard.press('Escape')
      expect((await readdir(join(dataFolder, 'photos'))).length).toBe(1)
      expect(await axeInBothThemes(page)).toEqual([])
      await page.keyboard.press('Escape')
      await page.getByRole('tab', { name: /Photos/ }).click()
      await page.getByText('Backups hold them too').waitFor()
      await page.getByRole('button', { name: 'Take back' }).click()
      await page.getByText('Photos of damage go here.').waitFor()
      expect(app.troubles).toEqual([])
    },
  )

  test('a list whose columns nobody can guess is matched by hand', async () => {
    const app = await openPlainApp()
    const { page } = app
    await addPots(page, '1')
    await page.getByRole('button', { name: 'Bring in a list' }).click()
    const list = ['Q;R;S', '21;rope;9', '22;rope;nine', '1;rope;9'].join('\n')
    await choose(page, 'Choose a file', 'odd.csv', list)
    const dialog = page.getByRole('dialog')
    await dialog.getByText('0 rows fit').waitFor()
    await dialog.getByLabel('Number').selectOption('Q')
    await dialog.getByLabel('Part').selectOption('R')
    await dialog.getByLabel('Diameter (mm)').selectOption('S')
    await dialog.getByText('Pot 21: rope').waitFor()
    await dialog.getByText(/The diameter “nine”/).waitFor()
    await dialog.getByText('The number 1 is already on a pot in the locker.').waitFor()
    await dialog.getByRole('button', { name: 'Add 1 pot', exact: true }).click()
    await expect
      .poll(async () => Object.values((await state(page)).pots).map(({ number }) => number))
      .toEqual(['1', '21'])
    expect(app.troubles).toEqual([])
  })

  test('broken bars are mended from the season’s list', async () => {
    const app = await openPlainApp()
    const { page } = app
    await addPots(page, '9')
    await page.getByRole('button', { name: 'Inspect the netting' }).click()
    await page.getByLabel('Broken bars in a row').fill('5')
    await page.getByRole('button', { name: 'Write down' }).click()
    await page.getByText('Netting of pot 9 looked at.').waitFor()
    await go(page, 'Season')
    const card = page.getByRole('article').filter({ hasText: 'Replace the netting on 1 pot' })
    await card.getByText('5 broken bars in a row.').waitFor()
    await card.getByRole('button', { name: 'Mended: netting of pot 9' }).click()
    await page.getByLabel('What was done').fill('Five bars knotted')
    await page.getByRole('button', { name: 'Write down' }).click()
    await expect.poll(() => card.count()).toBe(0)
    expect(app.troubles).toEqual([])
  })
})
