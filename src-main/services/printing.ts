import type { Handlers, Reply, Subject } from '@shared/contract/contract'
import { err, type Result } from '@shared/units/result'

/** What puts the sheet shown on paper or into a PDF, where the program around the services can. */
export interface SheetPrinter {
  readonly toPaper: () => Promise<Result<Reply<'print:paper'>>>
  readonly toPdf: (fileName: string) => Promise<Result<Reply<'print:pdf'>>>
}

export function printingHandlers(printer: SheetPrinter | undefined): Handlers<Subject<'print'>> {
  return {
    'print:paper': () => printer?.toPaper() ?? Promise.resolve(throughBrowser),
    'print:pdf': ({ fileName }) => printer?.toPdf(safeName(fileName)) ?? Promise.resolve(throughBrowser),
  }
}

const throughBrowser = err({
  code: 'unavailable' as const,
  message: 'This is printed through the browser.',
})

/** A name for a file on any system: no folders in it, and nothing that some system keeps for itself. */
function safeName(name: string): string {
  const plain = name
    .replace(/[\\/:*?"<>|]/g, ' ')
    .replace(/^[\s.]+/, '')
    .replace(/\s+/g, ' ')
    .trim()
  return plain.toLowerCase().endsWith('.pdf') ? plain : `${plain}.pdf`
}
