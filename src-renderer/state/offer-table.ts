import { notices } from '@renderer/ui/notices.svelte'
import { reader } from '@renderer/ui/reader.svelte'
import { offerFile } from './file-exchange'
import { stateNotes as w } from './words'

/**
 * Hands over a table as CSV, the same in every locale, so that a table written here is read anywhere. Where numbers
 * have a comma a spreadsheet takes 1.5 for the first of May, so it is said how to open it.
 */
export function offerTable(fileName: string, text: string): void {
  offerFile(fileName, text, 'text/csv')
  if (reader.decimalMark === ',') notices.say(w.openTable, { topic: 'table' })
}
