import type { PrintToPDFOptions } from 'electron'

/** From this version on the page draws its own page numbers, by its style sheet. */
const numbersItsPages = 131

/**
 * How a sheet becomes a PDF: the size that its style sheet asks for, tagged for readers of the screen, with its
 * headings as an outline.
 *
 * @param chromium version of the engine, as `130.0.6723.59`
 */
export function pdfOptions(chromium: string): PrintToPDFOptions {
  const major = Number.parseInt(chromium, 10)
  return {
    preferCSSPageSize: true,
    printBackground: true,
    generateTaggedPDF: true,
    generateDocumentOutline: true,
    ...(major < numbersItsPages
      ? { displayHeaderFooter: true, headerTemplate: '<span></span>', footerTemplate: pageNumber }
      : {}),
  }
}

const pageNumber =
  '<div style="width:100%;padding:0 14mm;text-align:right;font-size:8pt;font-family:sans-serif;color:#555">' +
  '<span class="pageNumber"></span> / <span class="totalPages"></span></div>'
