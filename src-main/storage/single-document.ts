import { readFile } from 'node:fs/promises'
import { basename } from 'node:path'
import { Low } from 'lowdb'
import { type AppError, err, ok, type Result } from '@shared/units/result'
import { DocumentFile, type DocumentKind, parseJson } from './document-file'
import type { Disk } from './durable-write'
import { setAside } from './set-aside'
import { diskError, isMissing } from './storage-fault'

/**
 * A document of which there is one, with a default where there is none yet. A damaged file is set aside for the
 * default; one that is refused, such as a newer one, is neither used nor written over.
 */
export class SingleDocument<T> {
  readonly fileName: string
  readonly #low: Low<T>
  #refused: AppError | undefined

  private constructor(
    path: string,
    kind: DocumentKind<T>,
    readonly whenNone: T,
    disk: Disk | undefined,
  ) {
    this.fileName = basename(path)
    this.#low = new Low(new DocumentFile(path, kind, disk), whenNone)
  }

  static async open<T>(
    path: string,
    kind: DocumentKind<T>,
    whenNone: T,
    now: () => Date,
    disk?: Disk,
  ): Promise<SingleDocument<T>> {
    const document = new SingleDocument(path, kind, whenNone, disk)
    if (await isDamaged(path)) await setAside(path, now())
    await document.reload()
    return document
  }

  get current(): T {
    return this.#low.data
  }

  /** Reads the file again after it changed underneath. */
  async reload(): Promise<void> {
    this.#refused = undefined
    try {
      await this.#low.read()
    } catch (thrown) {
      this.#refused = diskError(thrown)
    }
  }

  /** Keeps the new content on disk first and in memory after, so that a failed save changes neither. */
  async replace(next: T): Promise<Result<T>> {
    if (this.#refused) return err(this.#refused)
    await this.#low.adapter.write(next)
    this.#low.data = next
    return ok(next)
  }
}

async function isDamaged(path: string): Promise<boolean> {
  try {
    return parseJson(await readFile(path, 'utf8')) === undefined
  } catch (thrown) {
    if (isMissing(thrown)) return false
    throw thrown
  }
}
