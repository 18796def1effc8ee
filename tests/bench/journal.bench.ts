import { readJournalLines } from '@main/storage/journal-lines'
import { foldJournal } from '@shared/journal/fold'
import { mergeJournals } from '@shared/journal/merge'
import { bench, describe } from 'vitest'
import { fleetHistory } from '../samples/journal-years'

const file = Buffer.from(
  fleetHistory(500, 100_000)
    .map((event) => `${JSON.stringify(event)}\n`)
    .join(''),
)
const nowMs = Date.parse('2026-01-01T00:00:00.000Z')

describe('journal of 100,000 events for 500 pots', () => {
  bench(
    'read, check and fold (target: under 300 ms)',
    () => {
      const { events } = readJournalLines(file)
      const state = foldJournal(mergeJournals([events]), nowMs)
      if (Object.keys(state.pots).length !== 500) throw new Error('the fold lost pots')
    },
    { iterations: 5, warmupIterations: 1, time: 0 },
  )
})
