import { readdir, unlink } from 'node:fs/promises'
import { join } from 'node:path'
import * as v from 'valibot'
import { documentText, parseDocument, readIfThere } from './document-file'
import { type Disk, writeDurably } from './durable-write'
import { isMissing } from './storage-fault'
import type { VersionClock } from './version-clock'

/*
 * What each machine last saved of each document: `versions/<machine>/<folder>/<id>.json`. The documents
 * themselves stay in their published format; this stands beside them. Only its own machine writes a note, so a
 * sync engine has nothing to fight over, and a version that was overwritten elsewhere can still be offered.
 */

const NoteSchema = v.strictObject({
  format: v.literal('potwright/version-note'),
  version: v.literal(1),
  /** Revision of the content saved, and of the file it replaced. */
  revision: v.string(),
  replaced: v.optional(v.string()),
  clock: v.record(v.string(), v.pipe(v.number(), v.integer(), v.minValue(0))),
  savedAt: v.string(),
  savedBy: v.string(),
  document: v.record(v.string(), v.unknown()),
})

type VersionNote = v.InferOutput<typeof NoteSchema>

const kind = { schema: NoteSchema, migrations: [], called: 'version note' }

export interface OwnedNote extends VersionNote {
  readonly machine: string
}

export class VersionNotes {
  constructor(
    readonly dataFolder: string,
    /** Folder of the documents the notes are about, as `pots`. */
    readonly subject: string,
    readonly machine: string,
    readonly disk: Disk,
  ) {}

  /** Notes of every machine about one document. One that cannot be read tells nothing and is passed over. */
  async about(id: string): Promise<OwnedNote[]> {
    const notes: OwnedNote[] = []
    for (const machine of await this.#machines()) {
      const text = await readIfThere(this.#path(machine, id))
      if (text === undefined) continue
      const note = parseDocument(text, kind)
      if (note.ok) notes.push({ machine, ...note.value })
    }
    return notes
  }

  async keep(
    id: string,
    note: {
      revision: string
      replaced: string | undefined
      clock: VersionClock
      savedAt: string
      savedBy: string
      document: Record<string, unknown>
    },
  ): Promise<void> {
    const { replaced, ...rest } = note
    const text = documentText({
      format: 'potwright/version-note',
      version: 1,
      ...rest,
      ...(replaced === undefined ? {} : { replaced }),
    })
    await writeDurably(this.#path(this.machine, id), text, this.disk)
  }

  /** Forgets this machine's note: the document was deleted here. */
  async forget(id: string): Promise<void> {
    await unlink(this.#path(this.machine, id)).catch((thrown: unknown) => {
      if (!isMissing(thrown)) throw thrown
    })
  }

  async #machines(): Promise<string[]> {
    try {
      const entries = await readdir(join(this.dataFolder, 'versions'), { withFileTypes: true })
      return entries
        .filter((entry) => entry.isDirectory())
        .map((entry) => entry.name)
        .sort()
    } catch (thrown) {
      if (isMissing(thrown)) return []
      throw thrown
    }
  }

  #path(machine: string, id: string): string {
    return join(this.dataFolder, 'versions', machine, this.subject, `${id}.json`)
  }
}
