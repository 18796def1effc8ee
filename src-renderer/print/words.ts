import type { SheetId } from '@renderer/state/route.svelte'
import type { Paper } from './paper'

export const sheetNames: Readonly<Record<SheetId, string>> = {
  build: 'Build sheet',
  check: 'Check sheet',
  labels: 'Label sheet',
  'day-card': 'Day card',
  'tide-table': 'Tide table',
  inspection: 'Inspection sheets',
  'season-list': 'Season list',
  gauge: 'Gauge at true size',
}

export const paperNames: Readonly<Record<Paper, string>> = { a4: 'A4', letter: 'Letter' }

export const printWords = {
  menu: 'Print',
  title: (sheet: string) => `${sheet}, as it will be printed`,
  back: 'Back',
  paper: 'Paper',
  print: 'Print',
  savePdf: 'Save as PDF',
  browserPdf: 'Choose “Save as PDF” as the printer in the window that opens.',
  saved: 'The PDF was saved.',
  opening: 'Laying out the sheet',
  notOpened: 'This sheet could not be laid out. Nothing was lost. Go back and try again.',
  printedOn: (day: string) => `Potwright, ${day}`,
  fileName: (sheet: string, of: string) => (of ? `${of}, ${sheet.toLowerCase()}` : sheet),
} as const
