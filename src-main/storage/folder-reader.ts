import { readdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import type { AppError } from '@shared/units/result'
import { type DocumentKind, parseDocument, parseJson, readIfThere } from './document-file'
import { fileRole } from './file-name'
import { SerialQueue } from './serial-queue'
import { setAside } from './set-aside'
import { isMissing } from './storage-fault'
import { type KeptDocument, revisionOf, type Stored } from './stored-document'
import type { OwnedNote, VersionNotes } from './version-notes'

/** A file in the folder that is not one of the documents as they should be. */
export interface OddFile<T> {
  readonly fileName: string
  readonly role: 'copy' | 'unreadable' | 'newer' | 'set-aside'
  /** What tells it apart for a person: what was added to the name, or the name itself. */
  readonly label: string
  readonly documentId?: string
  readonly document?: T
  readonly error?: AppError
}

export interface Found<T> {
  readonly stored: Stored<T>
  /** What each machine last saved of it. */
  readonly notes: readonly OwnedNote[]
}

export interface FolderContents<T> {
  readonly documents: readonly Found<T>[]
  readonly odd: readonly OddFile<T>[]
}

export type Current<T> =
  { state: 'missing' } | { state: 'unusable'; error: AppError } | { state: 'good'; stored: Stored<T> }

// A sync engine may be half-way through writing; a second look a moment later tells damage from delivery.
const secondLookMs = 150

/** Reads a folder of documents and tells documents, copies and damage apart. Damage is set aside, never lost. */
export class FolderReader<T extends KeptDocument> {
  readonly #readings = new SerialQueue()

  constructor(
    readonly folder: string,
    readonly suffix: string,
    readonly kind: DocumentKind<T>,
    readonly notes: VersionNotes,
    readonly now: () => Date,
  ) {}

  /** One reading at a time: of two, each could take the other's setting aside for a file that was never there. */
  contents(): Promise<FolderContents<T>> {
    return this.#readings.run(() => this.#read())
  }

  async #read(): Promise<FolderContents<T>> {
    const names = await namesIn(this.folder)
    const found = (await Promise.all(names.map((name) => this.#look(name)))).filter(
      (file) => file !== undefined,
    )
    return {
      documents: found
        .filter((file) => 'stored' in file)
        .sort((a, b) => byName(a.stored.document, b.stored.document)),
      odd: found.filter((file) => 'role' in file).sort((a, b) => (a.fileName < b.fileName ? -1 : 1)),
    }
  }

  /** What stands in the place of one document now. */
  async current(id: string): Promise<Current<T>> {
    const path = join(this.folder, `${id}${this.suffix}`)
    const text = await readIfThere(path)
    if (text === undefined) return { state: 'missing' }
    const read = parseDocument(text, this.kind)
    if (!read.ok) return { state: 'unusable', error: read.error }
    const document = read.value
    if (document.id !== id)
      return {
        state: 'unusable',
        error: { code: 'conflict', message: `The file of this ${this.kind.called} holds another one.` },
      }
    return { state: 'good', stored: (await this.#withNotes(document, path)).stored }
  }

  async #look(fileName: string): Promise<Found<T> | OddFile<T> | undefined> {
    const role = fileRole(fileName, this.suffix)
    if (role.role === 'ignored') return undefined
    if (role.role === 'set-aside')
      return { fileName, role: 'set-aside', label: fileName, documentId: fileName.split('.')[0] ?? '' }
    const path = join(this.folder, fileName)
    const text = await readIfThere(path)
    if (text === undefined) return undefined
    const read = parseDocument(text, this.kind)
    if (!read.ok) {
      if (role.role === 'document' && parseJson(text) === undefined)
        return this.#damaged(fileName, role.id, text)
      const label = role.role === 'copy' ? role.label : fileName
      return {
        fileName,
        role: read.error.code === 'newer_version' ? 'newer' : 'unreadable',
        label,
        error: read.error,
      }
    }
    const document = read.value
    if (role.role === 'document' && role.id === document.id) return this.#withNotes(document, path)
    const label =
      role.role === 'copy' ? role.label : role.id.replace(document.id, '').replace(/^-/, '') || role.id
    return { fileName, role: 'copy', label, documentId: document.id, document }
  }

  async #damaged(
    fileName: string,
    id: string,
    firstText: string,
  ): Promise<Found<T> | OddFile<T> | undefined> {
    await pause(secondLookMs)
    const path = join(this.folder, fileName)
    if ((await readIfThere(path)) !== firstText) return this.#look(fileName)
    try {
      const label = await setAside(path, this.now())
      return { fileName: label, role: 'set-aside', label, documentId: id }
    } catch {
      // The folder can only be read: say what is wrong and leave the file where it is.
      return { fileName, role: 'unreadable', label: fileName, documentId: id }
    }
  }

  async #withNotes(document: T, path: string): Promise<Found<T>> {
    const notes = await this.notes.about(document.id)
    const revision = revisionOf(document)
    const own = notes.find((note) => note.revision === revision)
    const savedAt = own?.savedAt ?? (await stat(path)).mtime.toISOString()
    return { stored: { document, revision, savedAt, ...(own ? { savedBy: own.savedBy } : {}) }, notes }
  }
}

export async function namesIn(folder: string): Promise<string[]> {
  try {
    return await readdir(folder)
  } catch (thrown) {
    if (isMissing(thrown)) return []
    throw thrown
  }
}

const byName = (a: KeptDocument, b: KeptDocument) => a.name.localeCompare(b.name) || (a.id < b.id ? -1 : 1)
