import { appendFile, mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import { describe, expect, test } from 'vitest'
import type { EventDraft } from '@shared/schema/journal'
import { ok } from '@shared/units/result'
import { failing } from './failing-disk'
import { Journal } from './journal'
import { readJournalLines } from './journal-lines'
import { asResult } from './storage-fault'
import { temporaryFolder } from './temporary-folder'

const data = temporaryFolder()
const path = (name: string) => join(data(), 'journal', name)
const clean: EventDraft = { kind: 'clean', pot: 'pot-7', note: 'mussels, größer' }

function journalOf(machine = 'shed', more: Partial<ConstructorParameters<typeof Journal>[0]> = {}) {
  let count = 0
  return new Journal({
    dataFolder: data(),
    machine,
    now: () => new Date('2026-12-05T10:00:00Z'),
    newId: () => `${machine}-${++count}-${Math.floor(performance.now() * 1000)}`,
    onWritten: () => Promise.resolve(),
    ...more,
  })
}

async function written(machine = 'shed', count = 3) {
  const journal = journalOf(machine)
  for (let turn = 0; turn < count; turn++) await journal.append([clean])
  return journal
}

describe('adding', () => {
  test('numbers events by machine and keeps them a line each', async () => {
    await written('shed', 2)
    await journalOf('shed').append([clean, { ...clean, at: '2026-12-01T08:00:00.000Z' }])
    const lines = (await readFile(path('shed.jsonl'), 'utf8')).trimEnd().split('\n')
    const events = lines.map((line) => JSON.parse(line) as { seq: number; at: string; machine: string })
    expect(events.map(({ seq }) => seq)).toEqual([1, 2, 3, 4])
    expect(events.map(({ at }) => at.slice(0, 10))).toEqual([
      '2026-12-05',
      '2026-12-05',
      '2026-12-05',
      '2026-12-01',
    ])
  })

  test('events asked for at once are all kept, in order', async () => {
    const journal = journalOf()
    await Promise.all(Array.from({ length: 20 }, () => journal.append([clean])))
    const { events } = await journalOf().load()
    expect(events.map(({ seq }) => seq)).toEqual(Array.from({ length: 20 }, (_, index) => index + 1))
  })

  test('the list that was read is the same one, longer, until another machine adds to it', async () => {
    const journal = await written('shed', 1)
    const { events } = await journal.load()
    await journal.append([clean])
    expect((await journal.load()).events).toBe(events)
    expect(events).toHaveLength(2)
    await written('office', 1)
    expect((await journal.load()).events).toHaveLength(3)
  })

  test('writes to the file of its own machine alone', async () => {
    await written('shed')
    await written('office')
    expect((await readdir(join(data(), 'journal'))).sort()).toEqual(['office.jsonl', 'shed.jsonl'])
    const { events, problems } = await journalOf('shed').load()
    expect(events).toHaveLength(6)
    expect(problems).toEqual([])
  })

  test.each([{ write: 'ENOSPC' }, { sync: 'ENOSPC' }])('a full disk adds nothing (%j)', async (faults) => {
    await written()
    const full = journalOf('shed', { disk: failing(faults) })
    expect(await asResult(() => full.append([clean]))).toMatchObject({ error: { code: 'storage' } })
    expect((await journalOf().load()).events).toHaveLength(3)
    expect(await journalOf().append([clean])).toMatchObject({ ok: true, value: [{ seq: 4 }] })
  })
})

describe('a torn last line', () => {
  test('cut at every byte of the last three lines: whole lines stay, the next event follows on', async () => {
    await written('shed', 4)
    const whole = await readFile(path('shed.jsonl'))
    const ends = [...whole.keys()].filter((index) => whole[index] === 0x0a)
    for (let length = (ends[0] ?? 0) + 1; length <= whole.length; length++) {
      await writeFile(path('shed.jsonl'), whole.subarray(0, length))
      // A line is whole once nothing but its end is missing.
      const kept = ends.filter((end) => length >= end).length
      const journal = journalOf()
      expect((await journal.load()).events).toHaveLength(kept)
      expect(await journal.append([clean])).toMatchObject({ value: [{ seq: kept + 1 }] })
      const { events, problems } = await journalOf().load()
      expect(events).toHaveLength(kept + 1)
      expect(problems).toEqual([])
    }
  })

  test('NULs left by a power cut are cut off', async () => {
    await written()
    await appendFile(path('shed.jsonl'), '\0'.repeat(512))
    expect(await journalOf().append([clean])).toMatchObject({ value: [{ seq: 4 }] })
    expect(await readFile(path('shed.jsonl'), 'utf8')).not.toContain('\0')
  })

  test("another machine's file is only read", async () => {
    await written('office')
    await appendFile(path('office.jsonl'), '{"kind":"cle')
    const before = await readFile(path('office.jsonl'), 'utf8')
    expect((await journalOf('shed').load()).events).toHaveLength(3)
    await journalOf('shed').append([clean])
    expect(await readFile(path('office.jsonl'), 'utf8')).toBe(before)
  })
})

describe('a bad line before the end', () => {
  test.each([
    ['damaged', '{"kind":'],
    ['unknown', '{"kind":"fly","pot":"a"}'],
    ['NULs', '\0\0\0'],
  ])('%s: stops the reading there, is reported, and nothing is added or lost', async (_, bad) => {
    await written()
    await appendFile(path('shed.jsonl'), `${bad}\n`)
    const text = await readFile(path('shed.jsonl'), 'utf8')
    const { events, problems } = await journalOf().load()
    expect(events).toHaveLength(3)
    expect(problems).toMatchObject([{ file: 'shed.jsonl', line: 4 }])
    expect(await journalOf().append([clean])).toMatchObject({ ok: false, error: { code: 'storage' } })
    expect(await readFile(path('shed.jsonl'), 'utf8')).toBe(text)
  })

  test('can be set aside: the rest is used again, the line is kept beside it', async () => {
    const journal = await written()
    await appendFile(path('shed.jsonl'), 'broken one\n')
    const [first = ''] = (await readFile(path('shed.jsonl'), 'utf8')).split('\n')
    await appendFile(path('shed.jsonl'), `${first.replace('"seq":1', '"seq":4')}\nbroken two\n`)
    expect(await journal.setBadLinesAside()).toEqual({ ok: true, value: { setAside: 2 } })
    expect((await journalOf().load()).problems).toEqual([])
    expect((await journalOf().load()).events).toHaveLength(4)
    expect(await readFile(path('shed.bad-20261205-100000.jsonl'), 'utf8')).toBe('broken one\nbroken two\n')
  })

  test('from a newer Potwright is never touched', async () => {
    const journal = await written('shed', 1)
    await appendFile(path('shed.jsonl'), '{"version":2,"kind":"fly"}\n')
    const text = await readFile(path('shed.jsonl'), 'utf8')
    expect((await journal.load()).problems[0]?.message).toMatch(/newer Potwright/)
    expect(await journal.append([clean])).toMatchObject({ error: { code: 'newer_version' } })
    expect(await journal.setBadLinesAside()).toMatchObject({ error: { code: 'newer_version' } })
    expect(await readFile(path('shed.jsonl'), 'utf8')).toBe(text)
  })
})

describe('a rename that fails', () => {
  test('putting bad lines aside leaves the file as it was, and nothing is lost', async () => {
    await written()
    await appendFile(path('shed.jsonl'), 'broken\n')
    const text = await readFile(path('shed.jsonl'), 'utf8')
    // The first rename is of the file for the bad lines, the second of the journal itself.
    for (const renames of [['EIO'], [undefined, 'EIO']]) {
      const journal = journalOf('shed', { disk: failing({ rename: renames }) })
      expect(await asResult(() => journal.setBadLinesAside())).toMatchObject({ error: { code: 'storage' } })
      expect(await readFile(path('shed.jsonl'), 'utf8')).toBe(text)
      expect((await journal.load()).events).toHaveLength(3)
    }
    expect(await journalOf().setBadLinesAside()).toEqual({ ok: true, value: { setAside: 1 } })
  })

  test('taking events in from a backup leaves none of them', async () => {
    const { events } = await (await written('office')).load()
    await rm(path('office.jsonl'))
    const journal = journalOf('shed', { disk: failing({ rename: ['EIO'] }) })
    expect(await asResult(async () => ok(await journal.absorb(events)))).toMatchObject({
      error: { code: 'storage' },
    })
    expect((await journal.load()).events).toEqual([])
    expect(await readdir(join(data(), 'journal'))).toEqual([])
    expect(await journalOf().absorb(events)).toBe(3)
  })

  test('adding needs none', async () => {
    const journal = journalOf('shed', { disk: failing({ rename: Array(10).fill('EIO') }) })
    expect(await journal.append([clean])).toMatchObject({ ok: true })
    expect((await journalOf().load()).events).toHaveLength(1)
  })
})

describe('taking events in from a backup', () => {
  test('adds those that are missing once, and numbers go on after them', async () => {
    const journal = await written('shed', 3)
    const { events } = await journal.load()
    await writeFile(path('shed.jsonl'), '')
    await journal.append([clean])
    expect(await journal.absorb(events)).toBe(3)
    expect(await journal.absorb(events)).toBe(0)
    expect((await journalOf().load()).events).toHaveLength(4)
    expect(await journalOf().append([clean])).toMatchObject({ value: [{ seq: 4 }] })
  })
})

test('a sync engine’s copy of a file is read as well', async () => {
  await written('office', 2)
  await writeFile(path('office (conflicted copy).jsonl'), await readFile(path('office.jsonl'), 'utf8'))
  const { events } = await journalOf('shed').load()
  expect(new Set(events.map(({ id }) => id)).size).toBe(2)
})

test('no file, an empty one and an empty text hold no events', async () => {
  expect(await journalOf().load()).toEqual({ events: [], problems: [] })
  await mkdir(join(data(), 'journal'))
  await writeFile(path('shed.jsonl'), '')
  expect(await journalOf().load()).toEqual({ events: [], problems: [] })
  expect(readJournalLines(Buffer.alloc(0))).toEqual({
    events: [],
    wholeBytes: 0,
    tail: 'none',
    bad: undefined,
  })
})
