import { mkdtemp, readFile, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import type { Page } from 'playwright-core'
import { afterEach, describe, expect, test } from 'vitest'
import { editions, openPlainApp } from './app'
import { axeFindings } from './axe'
import { openDesktopEdition, type OpenedDesktop } from './desktop-edition'

/* Sheets on paper: what a reader of a PDF finds in it. */

let desktop: OpenedDesktop | undefined
afterEach(async () => {
  await desktop?.close().catch(() => undefined)
  desktop = undefined
})

/** What a PDF says of itself, read off its plain parts. */
function readPdf(bytes: Buffer) {
  const text = bytes.toString('latin1')
  const box = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(text)
  return {
    isPdf: text.startsWith('%PDF-'),
    pages: text.match(/\/Type \/Page\b(?!s)/g)?.length ?? 0,
    tagged: text.includes('/StructTreeRoot') && text.includes('/MarkInfo'),
    outline: text.includes('/Outlines'),
    sizePt: box ? [Math.round(Number(box[1])), Math.round(Number(box[2]))] : undefined,
  }
}

async function openSheet(page: Page, name: string, heading: string) {
  await page.getByRole('button', { name: 'Print', exact: true }).click()
  await page.getByRole('menuitem', { name }).click()
  await page.getByRole('heading', { name: heading, exact: true }).first().waitFor()
}

const pdfOf = async (page: Page) =>
  readPdf(await page.pdf({ preferCSSPageSize: true, tagged: true, outline: true, printBackground: true }))

test('build sheet, check sheet and labels become tagged PDFs of the paper chosen', async () => {
  const app = await openPlainApp()
  const { page } = app
  await page.getByLabel('Region').selectOption({ label: 'New South Wales' })

  await openSheet(page, 'Build sheet', 'Drawing')
  await page.getByRole('radio', { name: 'A4' }).check()
  await expect.poll(async () => (await pdfOf(page)).sizePt).toEqual([595, 842])
  const build = await pdfOf(page)
  expect(build).toMatchObject({ isPdf: true, tagged: true, outline: true })
  expect(build.pages).toBeGreaterThanOrEqual(2)
  await page.getByRole('radio', { name: 'Letter' }).check()
  await expect.poll(async () => (await pdfOf(page)).sizePt).toEqual([612, 792])
  expect(await page.getByRole('img', { name: /^The pot from/ }).count()).toBe(3)
  expect(await axeFindings(page)).toEqual([])

  await page.keyboard.press('Escape')
  await openSheet(page, 'Check sheet', 'Verdicts')
  expect(await page.locator('.paper').textContent()).toContain(
    'Fisheries Management (General) Regulation 2019',
  )
  expect(await axeFindings(page)).toEqual([])

  await page.keyboard.press('Escape')
  await openSheet(page, 'Label sheet', 'On the float')
  await page.getByLabel('Last name').fill('Varga')
  await page.getByLabel('One initial').fill('I')
  await page.getByLabel('Year of birth').fill('1980')
  await page.getByLabel('Postcode').fill('2000')
  const line = page.getByText('I VARGA', { exact: true }).first()
  await line.waitFor()
  // New South Wales asks for letters of 15 mm: the type must be as large as makes its capitals so high.
  const sizePx = await line.evaluate((node) => Number.parseFloat(getComputedStyle(node).fontSize))
  const share = await line.evaluate((node) => {
    const pen = document.createElement('canvas').getContext('2d')
    if (!pen) return 0
    pen.font = `600 1000px ${getComputedStyle(node).fontFamily}`
    return pen.measureText('H').actualBoundingBoxAscent / 1000
  })
  expect((sizePx * share * 25.4) / 96).toBeCloseTo(15, 1)
  expect(await axeFindings(page)).toEqual([])
  expect(app.troubles).toEqual([])
})

test('a season’s sheets and a water’s are laid out of the demo', async () => {
  const app = await openPlainApp()
  const { page } = app
  await page.getByRole('button', { name: 'Queensland crew, metric' }).click()
  await page.getByRole('complementary', { name: 'Look at the demo' }).waitFor()
  await page.getByRole('button', { name: 'Season', exact: true }).click()
  await page.getByRole('tab', { name: /sheets/i }).click()
  await page.getByRole('button', { name: /^Print all/ }).click()
  await expect.poll(() => page.getByRole('heading', { name: /^Inspection sheet, pot/ }).count()).toBe(7)
  expect((await pdfOf(page)).pages).toBeGreaterThanOrEqual(7)
  await page.getByRole('button', { name: 'Back' }).click()

  await page.getByRole('button', { name: 'Waters', exact: true }).click()
  await page.getByRole('button', { name: 'Day card' }).click()
  await page.getByRole('heading', { name: 'Set', exact: true }).waitFor()
  expect(await axeFindings(page)).toEqual([])
  await page.getByRole('button', { name: 'Back' }).click()
  await page.getByRole('button', { name: 'Tide table' }).click()
  await expect.poll(() => page.locator('.paper tbody tr').count()).toBe(30)
  expect(app.troubles).toEqual([])
})

const desktopMissing = editions.find(({ edition }) => edition === 'desktop')?.missing ?? true

describe('desktop edition', () => {
  test.skipIf(desktopMissing)('the window saves its sheet as a tagged PDF where the user says', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'potwright-e2e-'))
    const file = join(folder, 'build.pdf')
    desktop = await openDesktopEdition({ home: join(folder, 'home'), dataFolder: join(folder, 'data') })
    await desktop.app.evaluate(({ dialog }, filePath) => {
      dialog.showSaveDialog = () => Promise.resolve({ canceled: false, filePath })
    }, file)
    const { page } = desktop
    await openSheet(page, 'Build sheet', 'Drawing')
    await page.getByRole('radio', { name: 'A4' }).check()
    await page.getByRole('button', { name: 'Save as PDF' }).click()
    await page.getByText('The PDF was saved.').waitFor()
    const pdf = readPdf(await readFile(file))
    expect(pdf).toMatchObject({ isPdf: true, tagged: true, outline: true })
    expect(pdf.sizePt?.map((pt) => Math.round(pt / 2))).toEqual([298, 421])
    await desktop.close()
    desktop = undefined
    await rm(folder, { recursive: true, force: true })
  })
})
