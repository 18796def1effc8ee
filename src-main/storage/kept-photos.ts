import { rm, stat } from 'node:fs/promises'
import { extname, join } from 'node:path'
import type { BackupPhoto } from '@shared/schema/backup'
import { type Disk, temporaryPrefix, writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
import { bytesOf, intact } from './photo-content'

// A backup that another machine made may still be on its way here, behind its photos.
const youngMs = 24 * 60 * 60 * 1000

/** The photos of all backups: each is kept once, named by what is in it, however many backups hold it. */
export class KeptPhotos {
  constructor(
    readonly folder: string,
    readonly disk?: Disk,
  ) {}

  async has(photo: BackupPhoto): Promise<boolean> {
    const found = await stat(this.#pathOf(photo)).catch(() => undefined) // not there, or not to be read
    return found?.size === photo.bytes
  }

  /** Keeps a photo unless it is kept already. Throws `DamagedPhoto` where the content is not the photo's. */
  async keep(photo: BackupPhoto, content: AsyncIterable<Uint8Array>): Promise<void> {
    if (!(await this.has(photo))) await writeDurably(this.#pathOf(photo), intact(content, photo), this.disk)
  }

  /** Throws `DamagedPhoto` at the end where it is not what was kept. */
  read(photo: BackupPhoto): AsyncIterable<Uint8Array> {
    return intact(bytesOf(this.#pathOf(photo)), photo)
  }

  /** Names of the kept files that hold none of these photos. */
  async without(photos: readonly BackupPhoto[]): Promise<string[]> {
    const held = new Set(photos.map(keptName))
    return (await namesIn(this.folder)).filter((name) => !name.startsWith(temporaryPrefix) && !held.has(name))
  }

  /** Removes kept files that no backup needs, except those that have just come. */
  async remove(names: readonly string[], now: Date): Promise<void> {
    for (const name of names) {
      const found = await stat(join(this.folder, name)).catch(() => undefined) // gone already
      if (found?.isFile() && now.getTime() - found.mtimeMs > youngMs)
        await rm(join(this.folder, name), { force: true })
    }
  }

  #pathOf(photo: BackupPhoto): string {
    return join(this.folder, keptName(photo))
  }
}

/** With its ending, so that a person who looks into the folder can open it. */
const keptName = ({ file, sha256 }: BackupPhoto) => `${sha256}${extname(file)}`
