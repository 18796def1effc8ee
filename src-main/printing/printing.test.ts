import { openTestServices } from '@main/services/open-test-services'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { ok } from '@shared/units/result'
import { dialog } from '@main/window/electron-stand-in'
import type { BrowserWindow } from 'electron'
import { mkdir, readdir, readFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test, vi } from 'vitest'
import { pdfOptions } from './pdf-options'
import { sheetPrinter } from './print-sheet'

const data = temporaryFolder()

test('a PDF keeps the size of its sheet and is tagged; an older engine draws the page numbers itself', () => {
  expect(pdfOptions('150.0.1')).toEqual({
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
  })
  expect(pdfOptions('130.0.6723.59')).toMatchObject({
    displayHeaderFooter: true,
    footerTemplate: expect.stringContaining('pageNumber') as string,
  })
})

test('the name of a PDF names no folder and ends as one', async () => {
  const asked: string[] = []
  const printer = {
    toPaper: () => Promise.resolve(ok({})),
    toPdf: (name: string) => Promise.resolve(ok({ saved: asked.push(name) > 0 })),
  }
  const host = {
    edition: 'desktop' as const,
    version: '1',
    runtime: {},
    licences: () => Promise.resolve([]),
    showMenu: () => undefined,
    flushed: () => undefined,
    printer,
  }
  const services = await openTestServices(data(), 'shed', { host })
  await services.handlers['print:pdf']({ fileName: '../Pot 7: deep/wide' })
  await services.handlers['print:pdf']({ fileName: 'Day card.PDF' })
  expect(asked).toEqual(['Pot 7 deep wide.pdf', 'Day card.PDF'])
  services.close()
})

test('where nothing prints by itself the answer says that the browser does', async () => {
  const services = await openTestServices(data())
  expect(await services.handlers['print:paper']({})).toMatchObject({
    ok: false,
    error: { code: 'unavailable' },
  })
  services.close()
})

describe('a window that prints', () => {
  type Printed = (printed: boolean, why: string) => void
  const windowThat = (print: (options: unknown, done: Printed) => void) =>
    ({
      webContents: { print, printToPDF: () => Promise.resolve(Buffer.from('%PDF-')) },
    }) as unknown as BrowserWindow
  const toPaper = (printed: boolean, why: string) =>
    sheetPrinter(() => windowThat((_options, done) => done(printed, why))).toPaper()

  test('tells of a printer that is not there, and what to do instead', async () => {
    expect(await toPaper(false, 'Invalid printer settings')).toEqual({
      ok: false,
      error: {
        code: 'unavailable',
        message:
          'Nothing was printed: Invalid printer settings. Save it as a PDF, or choose another printer.',
      },
    })
    expect(await toPaper(false, '')).toMatchObject({
      error: { message: expect.stringMatching(/the printer did not answer/) as string },
    })
  })

  test.each([
    [true, ''],
    [false, 'Print job canceled'],
  ])('has nothing to say where it was printed (%s) or the reader thought better of it', async (done, why) => {
    expect(await toPaper(done, why)).toEqual({ ok: true, value: {} })
  })

  test('is refused a folder that can not be written to, and leaves nothing there', async () => {
    const taken = join(data(), 'sheet.pdf')
    await mkdir(taken)
    const choose = vi.spyOn(dialog, 'showSaveDialog').mockResolvedValue({ canceled: false, filePath: taken })
    const printer = sheetPrinter(() => windowThat(() => undefined))
    expect(await printer.toPdf('sheet.pdf')).toMatchObject({ ok: false, error: { code: 'storage' } })
    expect(await readdir(taken)).toEqual([])

    const free = join(data(), 'other.pdf')
    choose.mockResolvedValue({ canceled: false, filePath: free })
    expect(await printer.toPdf('other.pdf')).toEqual({ ok: true, value: { saved: true } })
    expect(await readFile(free, 'utf8')).toBe('%PDF-')
    choose.mockResolvedValue({ canceled: true, filePath: '' })
    expect(await printer.toPdf('third.pdf')).toEqual({ ok: true, value: { saved: false } })
  })

  test('says so where there is no window yet', async () => {
    expect(await sheetPrinter(() => undefined).toPaper()).toMatchObject({ error: { code: 'unavailable' } })
  })
})
