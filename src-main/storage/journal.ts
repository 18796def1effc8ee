import { mkdir, stat, truncate } from 'node:fs/promises'
import { join } from 'node:path'
import { err, ok, type AppError, type Result } from '@shared/units/result'
import { type EventDraft, type JournalEvent } from '@shared/schema/journal'
import { readIfThere } from './document-file'
import { type Disk, realDisk, writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
import { type BadLine, type JournalLines, readJournalLines } from './journal-lines'
import { SerialQueue } from './serial-queue'
import { isSetAside } from './set-aside'
import { timeStamp } from './time-stamp'

export interface JournalOptions {
  readonly dataFolder: string
  readonly machine: string
  readonly now: () => Date
  readonly newId: () => string
  readonly disk?: Disk
  /** Told after this process wrote a file itself. */
  readonly onWritten: (fileName: string) => Promise<void>
}

/** A journal file that could not be read to its end. */
export interface JournalProblem {
  readonly file: string
  readonly line: number
  readonly message: string
}

const suffix = '.jsonl'

/**
 * What happened to gear, one append-only file a machine. This machine adds to its own file alone, each event
 * synced to the disk before it counts; the files of others are only read.
 */
export class Journal {
  readonly #folder: string
  readonly #queue = new SerialQueue()
  readonly #known = new Map<string, { signature: string; lines: JournalLines }>()

  constructor(readonly options: JournalOptions) {
    this.#folder = join(options.dataFolder, 'journal')
  }

  /** The events of every machine, in no particular order, and the files that stopped the reading. */
  async load(): Promise<{ events: JournalEvent[]; problems: JournalProblem[] }> {
    const events: JournalEvent[] = []
    const problems: JournalProblem[] = []
    for (const fileName of await this.#fileNames()) {
      const lines = await this.#lines(fileName)
      for (const event of lines.events) events.push(event)
      if (lines.bad)
        problems.push({ file: fileName, line: lines.bad.line, message: problemMessage(fileName, lines.bad) })
    }
    return { events, problems }
  }

  /** Adds events to this machine's file, in order. They are on the disk when this resolves. */
  append(drafts: readonly EventDraft[]): Promise<Result<JournalEvent[]>> {
    return this.#queue.run(async () => {
      const { machine, now, newId } = this.options
      const lines = await this.#lines(this.#ownFile)
      if (lines.bad) return err(unreadable(this.#ownFile, lines.bad))
      const lastSeq = await this.#lastSeq()
      const events = drafts.map((draft, index) => ({
        ...draft,
        version: 1 as const,
        id: newId(),
        machine,
        seq: lastSeq + 1 + index,
        at: draft.at ?? now().toISOString(),
      })) as JournalEvent[]
      await this.#write(lines, events)
      return ok(events)
    })
  }

  /** Takes in events from a backup that are not here, in a file of their own; returns how many. */
  absorb(events: readonly JournalEvent[]): Promise<number> {
    return this.#queue.run(async () => {
      const known = new Set((await this.load()).events.map(({ id }) => id))
      const missing = events.filter(({ id }) => !known.has(id))
      if (missing.length === 0) return 0
      const fileName = `restored-${timeStamp(this.options.now())}${suffix}`
      await writeDurably(join(this.#folder, fileName), linesOf(missing), this.options.disk)
      await this.options.onWritten(fileName)
      return missing.length
    })
  }

  /**
   * Takes a bad line out of this machine's file so that the rest can be used again. The line is kept in a file of
   * its own beside it.
   */
  setBadLinesAside(): Promise<Result<{ setAside: number }>> {
    return this.#queue.run(async () => {
      const { machine, now } = this.options
      const path = join(this.#folder, this.#ownFile)
      let text = (await readIfThere(path)) ?? ''
      const bad: string[] = []
      for (let lines = readJournalLines(text); lines.bad; lines = readJournalLines(text)) {
        if (lines.bad.newer) return err(unreadable(this.#ownFile, lines.bad))
        const all = text.split('\n')
        bad.push(...all.splice(lines.bad.line - 1, 1))
        text = all.join('\n')
      }
      if (bad.length === 0) return ok({ setAside: 0 })
      await writeDurably(
        join(this.#folder, `${machine}.bad-${timeStamp(now())}${suffix}`),
        `${bad.join('\n')}\n`,
      )
      await writeDurably(path, text)
      await this.options.onWritten(this.#ownFile)
      return ok({ setAside: bad.length })
    })
  }

  async #write(lines: JournalLines, events: readonly JournalEvent[]): Promise<void> {
    await mkdir(this.#folder, { recursive: true })
    const path = join(this.#folder, this.#ownFile)
    if (lines.tail === 'torn') await truncate(path, lines.wholeBytes)
    const text = (lines.tail === 'unended' ? '\n' : '') + linesOf(events)
    const file = await (this.options.disk ?? realDisk).open(path, 'a')
    try {
      await file.appendFile(text, 'utf8')
      await file.sync()
    } catch (thrown) {
      // Half a line may be there; take it off so that nothing unacknowledged is read back.
      await file.truncate(lines.wholeBytes).catch(() => undefined)
      throw thrown
    } finally {
      await file.close()
    }
    // Kept as read, so that a long log is not read again for every event.
    const grown = {
      events: [...lines.events, ...events],
      wholeBytes: lines.wholeBytes + Buffer.byteLength(text),
      tail: 'none' as const,
      bad: undefined,
    }
    this.#known.set(this.#ownFile, { signature: await signatureOf(path), lines: grown })
    await this.options.onWritten(this.#ownFile)
  }

  /** The last number this machine gave out; some may stand in copies and in files taken from a backup. */
  async #lastSeq(): Promise<number> {
    const { events } = await this.load()
    return events.reduce(
      (last, { machine, seq }) => (machine === this.options.machine ? Math.max(last, seq) : last),
      0,
    )
  }

  /** The lines of one file, read again only where it changed since. */
  async #lines(fileName: string): Promise<JournalLines> {
    const path = join(this.#folder, fileName)
    const signature = await signatureOf(path)
    const known = this.#known.get(fileName)
    if (known?.signature === signature) return known.lines
    const lines = readJournalLines((await readIfThere(path)) ?? '')
    this.#known.set(fileName, { signature, lines })
    return lines
  }

  /** Copies that a sync engine made of a file are read too: an event seen twice counts once. */
  async #fileNames(): Promise<string[]> {
    return (await namesIn(this.#folder))
      .filter((name) => name.endsWith(suffix) && !name.startsWith('.') && !isSetAside(name))
      .sort()
  }

  get #ownFile(): string {
    return `${this.options.machine}${suffix}`
  }
}

const linesOf = (events: readonly JournalEvent[]) =>
  events.map((event) => `${JSON.stringify(event)}\n`).join('')

async function signatureOf(path: string): Promise<string> {
  const found = await stat(path).catch(() => undefined) // no file yet is a state like any other
  return found ? `${found.size}:${found.mtimeMs}` : 'none'
}

const problemMessage = (file: string, bad: BadLine) =>
  bad.newer
    ? `${file} was written by a newer Potwright from line ${bad.line} on. What came before is used; nothing was changed.`
    : `Line ${bad.line} of ${file} cannot be read (${bad.message}). What came before is used; nothing was changed.`

const unreadable = (file: string, bad: BadLine): AppError => ({
  code: bad.newer ? 'newer_version' : 'storage',
  message: `Nothing was added. ${problemMessage(file, bad)}`,
})
