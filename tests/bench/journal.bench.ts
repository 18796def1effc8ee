import { foldJournal } from '@shared/journal/fold'
import { mergeJournals } from '@shared/journal/merge'
import { JournalEventSchema } from '@shared/schema/journal'
import * as v from 'valibot'
import { bench, describe } from 'vitest'
import { fleetHistory } from '../samples/journal-years'

const lines = fleetHistory(500, 100_000).map((event) => JSON.stringify(event))
const nowMs = Date.parse('2026-01-01T00:00:00.000Z')

describe('journal of 100,000 events for 500 pots', () => {
  bench(
    'read, check and fold (target: under 300 ms)',
    () => {
      const events = lines.map((line) => v.parse(JournalEventSchema, JSON.parse(line)))
      const state = foldJournal(mergeJournals([events]), nowMs)
      if (Object.keys(state.pots).length !== 500) throw new Error('the fold lost pots')
    },
    { iterations: 5, warmupIterations: 1, time: 0 },
  )
})
