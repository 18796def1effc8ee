import { stat, truncate } from 'node:fs/promises'
import { join } from 'node:path'
import { err, ok, type AppError, type Result } from '@shared/units/result'
import { type EventDraft, type JournalEvent } from '@shared/schema/journal'
import { bytesIfThere } from './document-file'
import { type Disk, realDisk, syncFolder, writeDurably } from './durable-write'
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

/** Every file read: its lines by name, and what they come to. */
interface WholeJournal {
  readonly files: ReadonlyMap<string, JournalLines>
  readonly events: JournalEvent[]
  /** The last number this machine gave out; some may stand in copies and in files taken from a backup. */
  readonly lastSeq: number
}

const suffix = '.jsonl'

/**
 * What happened to gear, one append-only file a machine. This machine adds to its own file alone, each event
 * synced to the disk before it counts; the files of others are only read.
 */
export class Journal {
  readonly #folder: string
  readonly #disk: Disk
  readonly #queue = new SerialQueue()
  readonly #known = new Map<string, { signature: string; lines: JournalLines }>()
  #whole: WholeJournal | undefined

  constructor(readonly options: JournalOptions) {
    this.#folder = join(options.dataFolder, 'journal')
    this.#disk = options.disk ?? realDisk
  }

  /**
   * The events of every machine, in no particular order, and the files that stopped the reading. The list of
   * events is the same one as before, longer by what was added here since, unless a file changed by another hand.
   */
  async load(): Promise<{ events: readonly JournalEvent[]; problems: JournalProblem[] }> {
    const { files, events } = await this.#queue.run(() => this.#read())
    const problems = [...files].flatMap(([file, { bad }]) =>
      bad ? [{ file, line: bad.line, message: problemMessage(file, bad) }] : [],
    )
    return { events, problems }
  }

  /** Adds events to this machine's file, in order. They are on the disk when this resolves. */
  append(drafts: readonly EventDraft[]): Promise<Result<JournalEvent[]>> {
    return this.#queue.run(async () => {
      const { machine, now, newId } = this.options
      const whole = await this.#read()
      const lines = whole.files.get(this.#ownFile) ?? readJournalLines(Buffer.alloc(0))
      if (lines.bad) return err(unreadable(this.#ownFile, lines.bad))
      const events = drafts.map((draft, index) => ({
        ...draft,
        version: 1 as const,
        id: newId(),
        machine,
        seq: whole.lastSeq + 1 + index,
        at: draft.at ?? now().toISOString(),
      })) as JournalEvent[]
      await this.#write(lines, events)
      return ok(events)
    })
  }

  /** Takes in events from a backup that are not here, in a file of their own; returns how many. */
  absorb(events: readonly JournalEvent[]): Promise<number> {
    return this.#queue.run(async () => {
      const known = new Set((await this.#read()).events.map(({ id }) => id))
      const missing = events.filter(({ id }) => !known.has(id))
      if (missing.length === 0) return 0
      const fileName = `restored-${timeStamp(this.options.now())}${suffix}`
      await writeDurably(join(this.#folder, fileName), linesOf(missing), this.#disk)
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
      let text = ((await bytesIfThere(path)) ?? Buffer.alloc(0)).toString('utf8')
      const bad: string[] = []
      const read = () => readJournalLines(Buffer.from(text))
      for (let lines = read(); lines.bad; lines = read()) {
        if (lines.bad.newer) return err(unreadable(this.#ownFile, lines.bad))
        const all = text.split('\n')
        bad.push(...all.splice(lines.bad.line - 1, 1))
        text = all.join('\n')
      }
      if (bad.length === 0) return ok({ setAside: 0 })
      await writeDurably(
        join(this.#folder, `${machine}.bad-${timeStamp(now())}${suffix}`),
        `${bad.join('\n')}\n`,
        this.#disk,
      )
      await writeDurably(path, text, this.#disk)
      await this.options.onWritten(this.#ownFile)
      return ok({ setAside: bad.length })
    })
  }

  async #write(lines: JournalLines, events: readonly JournalEvent[]): Promise<void> {
    await this.#disk.mkdir(this.#folder, { recursive: true })
    const path = join(this.#folder, this.#ownFile)
    const text = (lines.tail === 'unended' ? '\n' : '') + linesOf(events)
    // By its name: Windows does not shorten a file that was opened to be added to.
    if (lines.tail === 'torn') await truncate(path, lines.wholeBytes)
    const file = await this.#disk.open(path, 'a')
    try {
      await file.appendFile(text, 'utf8')
      await file.sync()
      if (lines.wholeBytes === 0) await syncFolder(this.#folder, this.#disk)
    } catch (thrown) {
      // Half a line may be there; take it off so that nothing unacknowledged is read back.
      await truncate(path, lines.wholeBytes).catch(() => undefined)
      throw thrown
    } finally {
      await file.close()
    }
    await this.#grow(lines, events, Buffer.byteLength(text))
    await this.options.onWritten(this.#ownFile)
  }

  /** Keeps what was written as if it had been read, so that a long log is not read again for every event. */
  async #grow(lines: JournalLines, events: readonly JournalEvent[], bytes: number): Promise<void> {
    lines.events.push(...events)
    const grown = {
      ...{ events: lines.events, wholeBytes: lines.wholeBytes + bytes },
      ...{ tail: 'none' as const, bad: undefined },
    }
    const signature = await signatureOf(join(this.#folder, this.#ownFile))
    this.#known.set(this.#ownFile, { signature, lines: grown })
    const whole = this.#whole
    if (!whole) return
    whole.events.push(...events)
    const files = new Map(whole.files).set(this.#ownFile, grown)
    this.#whole = { files, events: whole.events, lastSeq: whole.lastSeq + events.length }
  }

  /** Every file, put together again only where one changed since. */
  async #read(): Promise<WholeJournal> {
    const names = await this.#fileNames()
    const files = new Map<string, JournalLines>()
    for (const name of names) files.set(name, await this.#lines(name))
    const before = this.#whole?.files
    if (
      this.#whole &&
      before?.size === files.size &&
      names.every((name) => before.get(name) === files.get(name))
    )
      return this.#whole
    const events: JournalEvent[] = []
    let lastSeq = 0
    for (const lines of files.values())
      for (const event of lines.events) {
        events.push(event)
        if (event.machine === this.options.machine && event.seq > lastSeq) lastSeq = event.seq
      }
    return (this.#whole = { files, events, lastSeq })
  }

  /** The lines of one file, read again only where it changed since. */
  async #lines(fileName: string): Promise<JournalLines> {
    const path = join(this.#folder, fileName)
    const signature = await signatureOf(path)
    const known = this.#known.get(fileName)
    if (known?.signature === signature) return known.lines
    const lines = readJournalLines((await bytesIfThere(path)) ?? Buffer.alloc(0))
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
