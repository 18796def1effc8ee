import { mkdir, rename } from 'node:fs/promises'
import { join } from 'node:path'
import { Low } from 'lowdb'
import { err, ok, type AppError, type Result } from '@shared/units/result'
import { DocumentFile, type DocumentKind, parseDocument, readIfThere } from './document-file'
import { type Disk, realDisk } from './durable-write'
import { FolderReader, namesIn } from './folder-reader'
import { SerialQueue } from './serial-queue'
import { type KeptDocument, revisionOf, type Stored } from './stored-document'
import { timeStamp } from './time-stamp'
import { nextClock } from './version-clock'
import { VersionNotes } from './version-notes'

export interface FolderOptions<T> {
  readonly dataFolder: string
  /** Folder under the data folder, as `pots`. */
  readonly subject: string
  /** Ending of the file names, as `.pot.json`. */
  readonly suffix: string
  readonly kind: DocumentKind<T>
  readonly machine: { readonly id: string; readonly name: string }
  readonly now: () => Date
  readonly disk?: Disk
  /** Told after this process wrote a file itself, so that the watcher does not report it back. */
  readonly onWritten?: (fileName: string) => Promise<void>
}

/**
 * A folder of small documents, one file each, that other machines may change underneath. A save names the
 * revision it started from and is refused where the file has moved on; nothing is ever overwritten unseen.
 */
export class DocumentFolder<T extends KeptDocument> {
  readonly reader: FolderReader<T>
  readonly queue = new SerialQueue()
  readonly #folder: string
  readonly #removed: string
  readonly #disk: Disk
  readonly #notes: VersionNotes

  constructor(readonly options: FolderOptions<T>) {
    const { dataFolder, subject, suffix, kind, machine, now } = options
    this.#folder = join(dataFolder, subject)
    this.#removed = join(dataFolder, 'removed', subject)
    this.#disk = options.disk ?? realDisk
    this.#notes = new VersionNotes(dataFolder, subject, machine.id, this.#disk)
    this.reader = new FolderReader(this.#folder, suffix, kind, this.#notes, now)
  }

  async get(id: string): Promise<Result<Stored<T>>> {
    const current = await this.reader.current(id)
    if (current.state === 'good') return ok(current.stored)
    return err(current.state === 'unusable' ? current.error : this.#notFound())
  }

  /** Saves a new document (no `base`), or replaces exactly the revision `base`. */
  save(document: T, base: string | undefined): Promise<Result<Stored<T>>> {
    return this.queue.run(async () => {
      const current = await this.reader.current(document.id)
      if (current.state === 'unusable') return err(current.error)
      const before = current.state === 'good' ? current.stored : undefined
      if (before?.revision === revisionOf(document)) return ok(before)
      if (before?.revision !== base) return err(this.#conflict(before === undefined))
      if (before === undefined && (await this.#clashesByCase(document.id))) return err(this.#conflict(false))
      return ok(await this.write(document, before?.revision))
    })
  }

  /** Puts a document in its place, whatever is there: a restore, of which a backup was made before. */
  put(document: T): Promise<Stored<T>> {
    return this.queue.run(() => this.write(document, undefined))
  }

  /** Writes a document over what is there. Call it from within `queue`. */
  async write(document: T, replaced: string | undefined): Promise<Stored<T>> {
    const { machine, now, kind } = this.options
    const revision = revisionOf(document)
    const savedAt = now().toISOString()
    const known = await this.#notes.about(document.id)
    const clock = nextClock(
      machine.id,
      known.map((note) => note.clock),
    )
    await this.#notes.keep(document.id, {
      revision,
      replaced,
      clock,
      savedAt,
      savedBy: machine.name,
      document: document as Record<string, unknown>,
    })
    const fileName = this.#fileName(document.id)
    const low = new Low(new DocumentFile(join(this.#folder, fileName), kind, this.#disk), document)
    await low.write()
    await this.options.onWritten?.(fileName)
    return { document, revision, savedAt, savedBy: machine.name }
  }

  /** Moves a document out of the folder, to where `restore` finds it. */
  remove(id: string, base: string | undefined): Promise<Result<Record<string, never>>> {
    return this.queue.run(async () => {
      const current = await this.reader.current(id)
      if (current.state === 'missing') return err(this.#notFound())
      if (current.state === 'good' && base !== undefined && current.stored.revision !== base)
        return err(this.#conflict(false))
      await this.putAway(this.#fileName(id))
      await this.#notes.forget(id)
      return ok({})
    })
  }

  /** Takes the newest removed document of this id back. */
  restore(id: string): Promise<Result<Stored<T>>> {
    return this.queue.run(async () => {
      const current = await this.reader.current(id)
      if (current.state === 'good') return ok(current.stored)
      const fileName = this.#fileName(id)
      const kept = (await namesIn(this.#removed)).filter(
        (name) => name.replace(putAwayPrefix, '') === fileName,
      )
      const newest = kept.sort().at(-1)
      const text = newest && (await readIfThere(join(this.#removed, newest)))
      if (!text) return err(this.#notFound())
      const read = parseDocument(text, this.options.kind)
      return read.ok ? ok(await this.write(read.value, undefined)) : read
    })
  }

  /** Moves a file of the folder to `removed/`, with the time in front. Call it from within `queue`. */
  async putAway(fileName: string): Promise<void> {
    await mkdir(this.#removed, { recursive: true })
    const taken = new Set(await namesIn(this.#removed))
    const stamp = timeStamp(this.options.now())
    let turn = 1
    while (taken.has(putAwayName(stamp, turn, fileName))) turn++
    await rename(join(this.#folder, fileName), join(this.#removed, putAwayName(stamp, turn, fileName)))
    await this.options.onWritten?.(fileName)
  }

  /** Some disks take `AB` and `ab` for one name; a new document must not land on another's file. */
  async #clashesByCase(id: string): Promise<boolean> {
    const wanted = this.#fileName(id).toLowerCase()
    return (await namesIn(this.#folder)).some((name) => name.toLowerCase() === wanted)
  }

  #fileName(id: string): string {
    return `${id}${this.options.suffix}`
  }

  #notFound(): AppError {
    return { code: 'not_found', message: `This ${this.options.kind.called} is not there any more.` }
  }

  #conflict(gone: boolean): AppError {
    const called = this.options.kind.called
    return {
      code: 'conflict',
      message: gone
        ? `This ${called} was removed elsewhere while it was open here. Nothing was lost; save it as a new one to keep it.`
        : `This ${called} was changed elsewhere since it was opened here. Nothing was overwritten; keep both, or look at the other one first.`,
    }
  }
}

const putAwayPrefix = /^\d{8}-\d{6}-\d{3}-/
const putAwayName = (stamp: string, turn: number, fileName: string) =>
  `${stamp}-${String(turn).padStart(3, '0')}-${fileName}`
