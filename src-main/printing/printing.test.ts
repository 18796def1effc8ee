import { openTestServices } from '@main/services/open-test-services'
import { temporaryFolder } from '@main/storage/temporary-folder'
import { ok } from '@shared/units/result'
import { expect, test } from 'vitest'
import { pdfOptions } from './pdf-options'

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
