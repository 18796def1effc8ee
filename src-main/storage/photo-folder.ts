import { readFile, stat } from 'node:fs/promises'
import { join } from 'node:path'
import * as v from 'valibot'
import type { BackupPhoto } from '@shared/schema/backup'
import { photoFile } from '@shared/schema/fields'
import { err, ok, type Result } from '@shared/units/result'
import { type Disk, writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
import { bytesOf, fingerprintOf } from './photo-content'
import { errnoCode, isMissing } from './storage-fault'

const kinds = {
  jpg: { type: 'image/jpeg', starts: [0xff, 0xd8, 0xff] },
  png: { type: 'image/png', starts: [0x89, 0x50, 0x4e, 0x47] },
  // Twelve bytes: the first four and the length alone are those of a sound as well.
  webp: {
    type: 'image/webp',
    starts: [0x52, 0x49, 0x46, 0x46, undefined, undefined, undefined, undefined, 0x57, 0x45, 0x42, 0x50],
  },
} as const
type Ending = keyof typeof kinds

/** Photos of damage, one file each under a name of our own; never changed once written. */
export class PhotoFolder {
  readonly #folder: string
  /** What is in each photo, found out once for as long as its file stays as it is. */
  readonly #known = new Map<string, { signature: string; photo: BackupPhoto }>()

  constructor(
    dataFolder: string,
    readonly newId: () => string,
    readonly disk?: Disk,
  ) {
    this.#folder = join(dataFolder, 'photos')
  }

  /** Keeps a photo; what it is is told from its first bytes, not from a name. */
  async add(base64: string): Promise<Result<string>> {
    const bytes = Buffer.from(base64, 'base64')
    const ending = (Object.keys(kinds) as Ending[]).find((kind) =>
      kinds[kind].starts.every((byte, i) => byte === undefined || bytes[i] === byte),
    )
    if (ending === undefined)
      return err({
        code: 'invalid',
        message: 'This is not a photo that Potwright can keep: use JPEG, PNG or WebP. Nothing was added.',
      })
    const file = `${this.newId()}.${ending}`
    await writeDurably(join(this.#folder, file), bytes, this.disk)
    return ok(file)
  }

  async get(file: string): Promise<Result<{ type: string; base64: string }>> {
    const ending = file.slice(file.lastIndexOf('.') + 1) as Ending
    try {
      return ok({
        type: kinds[ending].type,
        base64: (await readFile(join(this.#folder, file))).toString('base64'),
      })
    } catch (thrown) {
      if (!isMissing(thrown)) throw thrown
      return err({
        code: 'not_found',
        message: 'The photo is not in the data folder. It may not have arrived from the other machine yet.',
      })
    }
  }

  pathOf({ file }: BackupPhoto): string {
    return join(this.#folder, file)
  }

  /** Every photo with what is in it, and the files that cannot be read. */
  async all(): Promise<{ photos: BackupPhoto[]; unreadable: string[] }> {
    const photos: BackupPhoto[] = []
    const unreadable: string[] = []
    for (const file of (await namesIn(this.#folder)).filter((name) => v.is(photoFile, name)).sort())
      try {
        photos.push(await this.#look(file))
      } catch (thrown) {
        if (errnoCode(thrown) === undefined) throw thrown
        if (!isMissing(thrown)) unreadable.push(file)
      }
    return { photos, unreadable }
  }

  read(photo: BackupPhoto): AsyncIterable<Uint8Array> {
    return bytesOf(this.pathOf(photo))
  }

  /** Puts a photo in its place, whatever is there: a restore, of which a backup was made before. */
  put(photo: BackupPhoto, content: AsyncIterable<Uint8Array>): Promise<void> {
    return writeDurably(this.pathOf(photo), content, this.disk)
  }

  async #look(file: string): Promise<BackupPhoto> {
    const path = join(this.#folder, file)
    const { size, mtimeMs } = await stat(path)
    const signature = `${size}:${mtimeMs}`
    const known = this.#known.get(file)
    if (known?.signature === signature) return known.photo
    const photo = { file, ...(await fingerprintOf(path)) }
    this.#known.set(file, { signature, photo })
    return photo
  }
}
