import { writeFile } from 'node:fs/promises'
import { type BrowserWindow, dialog } from 'electron'
import type { SheetPrinter } from '@main/services/printing'
import { asResult } from '@main/storage/storage-fault'
import { err, ok } from '@shared/units/result'
import { pdfOptions } from './pdf-options'

/** Puts what a window shows on paper or into a PDF, once there is a window. */
export function sheetPrinter(shown: () => BrowserWindow | undefined): SheetPrinter {
  return {
    toPaper: () =>
      new Promise((done) => {
        const window = shown()
        if (!window) return done(noWindow)
        window.webContents.print({ printBackground: true }, (printed, why) => {
          done(printed || isChangeOfMind(why) ? ok({}) : err(notPrinted(why)))
        })
      }),
    toPdf: async (fileName) => {
      const window = shown()
      if (!window) return noWindow
      const { canceled, filePath } = await dialog.showSaveDialog(window, {
        defaultPath: fileName,
        filters: [{ name: 'PDF', extensions: ['pdf'] }],
      })
      if (canceled || !filePath) return ok({ saved: false })
      return asResult(async () => {
        await writeFile(filePath, await window.webContents.printToPDF(pdfOptions(process.versions.chrome)))
        return ok({ saved: true })
      })
    },
  }
}

const noWindow = err({ code: 'unavailable' as const, message: 'There is no window to print from.' })

const isChangeOfMind = (why: string) => /cancel/i.test(why)

const notPrinted = (why: string) => ({
  code: 'unavailable' as const,
  message: `Nothing was printed: ${why || 'the printer did not answer'}. Save it as a PDF, or choose another printer.`,
})
