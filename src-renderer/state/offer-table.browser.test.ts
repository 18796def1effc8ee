import { afterEach, expect, test, vi } from 'vitest'
import { notices } from '@renderer/ui/notices.svelte'
import { reader } from '@renderer/ui/reader.svelte'
import { offerTable } from './offer-table'

afterEach(() => {
  reader.decimalMark = '.'
  vi.restoreAllMocks()
})

test.each([
  ['.', 0],
  [',', 1],
] as const)('where numbers have %j, a table is handed over with %d word on how to open it', (mark, said) => {
  const kept = vi.spyOn(HTMLAnchorElement.prototype, 'click').mockReturnValue()
  reader.decimalMark = mark
  offerTable('pots.csv', 'number,lengthM\n1,18.5\n')
  expect(kept).toHaveBeenCalledOnce()
  const words = notices.list.filter(({ text }) => text.includes('a full stop in its numbers'))
  expect(words).toHaveLength(said)
})
