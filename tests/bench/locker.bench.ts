import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { LockerBook } from '@main/services/locker-book'
import { Journal } from '@main/storage/journal'
import { withLatestRuns } from '@shared/journal/view'
import { lockerLives } from '@shared/season/locker-lives'
import { wearAssumptions } from '@shared/wear/assumptions'
import { afterAll, bench, describe } from 'vitest'
import { fleetHistory } from '../samples/journal-years'

const folder = mkdtempSync(join(tmpdir(), 'potwright-bench-'))
mkdirSync(join(folder, 'journal'))
const text = fleetHistory(500, 100_000)
  .map((event) => `${JSON.stringify(event)}\n`)
  .join('')
writeFileSync(join(folder, 'journal', 'boat.jsonl'), text)

const nowMs = Date.parse('2026-01-01T00:00:00.000Z')
let ticks = 0
const now = () => new Date(nowMs + ++ticks)
let ids = 0
const newId = () => `bench-${++ids}`
const onWritten = () => Promise.resolve()
const open = () =>
  new LockerBook(new Journal({ dataFolder: folder, machine: 'shed', now, newId, onWritten }), now)

afterAll(() => rmSync(folder, { recursive: true, force: true }))

describe('locker of 500 pots after 100,000 events', () => {
  const held = open()

  bench(
    'one event more, safe on the disk (target: under 5 ms)',
    async () => {
      const written = await held.record([{ kind: 'inspect', part: 'pot3-rope', grade: 1 }])
      if (!written.ok) throw new Error(written.error.message)
    },
    { iterations: 50, warmupIterations: 3, time: 0 },
  )

  bench(
    'opens once read, with how every part stands (target: under 200 ms)',
    async () => {
      const { book } = await held.open()
      const view = structuredClone(withLatestRuns(book.state, 20))
      const lives = lockerLives(view, { nowMs, sheet: wearAssumptions, aheadMonths: 6 })
      if (lives.length !== 5000) throw new Error('parts are missing')
    },
    { iterations: 10, warmupIterations: 2, time: 0 },
  )
})
