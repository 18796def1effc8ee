import { readFile } from 'node:fs/promises'
import type { Adapter } from 'lowdb'
import * as v from 'valibot'
import { readDocument } from '@shared/schema/read-document'
import { err, type Result } from '@shared/units/result'
import { type Disk, realDisk, writeDurably } from './durable-write'
import { migrate, type Migration } from './migrate'
import { SerialQueue } from './serial-queue'
import { isMissing, StorageFault } from './storage-fault'

/** What a kind of document is called, looks like and grew from. */
export interface DocumentKind<T> {
  readonly schema: v.GenericSchema<unknown, T>
  readonly migrations: readonly Migration[]
  /** As in "this pot design was written by a newer Potwright". */
  readonly called: string
}

/**
 * lowdb adapter for one JSON document: migrates and validates what it reads, validates what it writes, and
 * writes in order and durably. What cannot be read throws a `StorageFault` and stays on disk as it is.
 */
export class DocumentFile<T> implements Adapter<T> {
  readonly #queue = new SerialQueue()

  constructor(
    readonly path: string,
    readonly kind: DocumentKind<T>,
    readonly disk: Disk = realDisk,
  ) {}

  async read(): Promise<T | null> {
    const text = await readIfThere(this.path)
    if (text === undefined) return null
    const read = parseDocument(text, this.kind)
    if (!read.ok) throw new StorageFault(read.error)
    return read.value
  }

  async write(data: T): Promise<void> {
    // The text is made now, so that later changes to the object wait for their own write.
    const text = documentText(v.parse(this.kind.schema, data))
    await this.#queue.run(() => writeDurably(this.path, text, this.disk))
  }
}

/** JSON as it is kept on disk: indented, so that a person can read it and a merge tool can compare it. */
export const documentText = (document: unknown) => `${JSON.stringify(document, undefined, 2)}\n`

/** Reads the text of a document: older versions are brought up to date, newer ones refused. */
export function parseDocument<T>(text: string, kind: DocumentKind<T>): Result<T> {
  const raw = parseJson(text)
  if (raw === undefined)
    return err({ code: 'invalid', message: `This ${kind.called} is damaged: it is not readable as JSON.` })
  return readDocument(kind.schema, migrate(raw, kind.migrations), kind.called)
}

/** The JSON object in a text, or undefined where there is none: empty, NULs, `null`, cut off, or not an object. */
export function parseJson(text: string): Record<string, unknown> | undefined {
  try {
    const raw: unknown = JSON.parse(text)
    return typeof raw === 'object' && raw !== null && !Array.isArray(raw)
      ? (raw as Record<string, unknown>)
      : undefined
  } catch {
    return undefined
  }
}

export async function readIfThere(path: string): Promise<string | undefined> {
  return (await bytesIfThere(path))?.toString('utf8')
}

export async function bytesIfThere(path: string): Promise<Buffer | undefined> {
  try {
    return await readFile(path)
  } catch (thrown) {
    if (isMissing(thrown)) return undefined
    throw thrown
  }
}
