import { readFile, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { gunzip, gzip } from 'node:zlib'
import { type Backup, type BackupPhoto, BackupSchema } from '@shared/schema/backup'
import { err, type Result } from '@shared/units/result'
import { backupsToKeep } from './backup-policy'
import { parseDocument } from './document-file'
import { type Disk, writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
import { KeptPhotos } from './kept-photos'
import { isMissing } from './storage-fault'
import { fromTimeStamp, timeStamp } from './time-stamp'

export interface BackupEntry {
  readonly id: string
  readonly writtenAt: string
  readonly sizeBytes: number
  /** Why it was made: by-hand, daily, before-restore, taken-in. */
  readonly reason: string
}

export type BackupReason = 'by-hand' | 'daily' | 'before-restore' | 'taken-in'

export const backupKind = {
  schema: BackupSchema,
  // The first backups knew of no photos.
  migrations: [(first: Record<string, unknown>) => ({ ...first, version: 2, photos: [] })],
  called: 'backup',
}

const suffix = '.backup.json.gz'
const namePattern = /^(\d{8}-\d{6})-([a-z-]+)\.backup\.json\.gz$/

/**
 * The folder of backups, packed, named by when and why they were made, with the photos of all of them in a folder of
 * its own. Old ones go as the policy says, and photos with the last backup that holds them.
 */
export class BackupArchive {
  readonly photos: KeptPhotos

  constructor(
    readonly folder: string,
    readonly now: () => Date,
    readonly disk?: Disk,
  ) {
    this.photos = new KeptPhotos(join(folder, 'photos'), disk)
  }

  /** Newest first. */
  async list(): Promise<BackupEntry[]> {
    const entries: BackupEntry[] = []
    for (const name of await namesIn(this.folder)) {
      const [, stamp = '', reason = ''] = namePattern.exec(name) ?? []
      const at = fromTimeStamp(stamp)
      if (!at) continue
      const { size } = await stat(join(this.folder, name))
      entries.push({ id: `${stamp}-${reason}`, writtenAt: at.toISOString(), sizeBytes: size, reason })
    }
    return entries.sort((a, b) => (a.id < b.id ? 1 : -1))
  }

  /** Keeps a backup; its photos are kept beforehand. */
  async keep(backup: Backup, reason: BackupReason): Promise<string> {
    const id = `${timeStamp(this.now())}-${reason}`
    const packed = await promisify(gzip)(JSON.stringify(backup))
    await writeDurably(join(this.folder, `${id}${suffix}`), packed, this.disk)
    if (await this.#prune(id)) await this.#prunePhotos(backup.photos)
    return id
  }

  async read(id: string): Promise<Result<Backup>> {
    try {
      const packed = await readFile(join(this.folder, `${id}${suffix}`))
      const text = (await promisify(gunzip)(packed)).toString('utf8')
      return parseDocument(text, backupKind)
    } catch (thrown) {
      if (isMissing(thrown)) return err({ code: 'not_found', message: 'This backup is not there any more.' })
      if (thrown instanceof Error && 'code' in thrown && String(thrown.code).startsWith('Z_'))
        return err({
          code: 'invalid',
          message: 'This backup is damaged. Nothing was changed; try an older one.',
        })
      throw thrown
    }
  }

  /** Removes backups that need not stay; true where there were some. */
  async #prune(justMade: string): Promise<boolean> {
    const entries = await this.list()
    const kept = backupsToKeep(
      entries.map(({ writtenAt }) => new Date(writtenAt)),
      this.now(),
    ).map((at) => at.toISOString())
    const old = entries.filter(({ id, writtenAt }) => id !== justMade && !kept.includes(writtenAt))
    for (const { id } of old) await rm(join(this.folder, `${id}${suffix}`), { force: true })
    return old.length > 0
  }

  /** Reads the other backups only where there is a photo that the newest does not hold: most often there is none. */
  async #prunePhotos(ofNewest: readonly BackupPhoto[]): Promise<void> {
    if ((await this.photos.without(ofNewest)).length === 0) return
    const held = [...ofNewest]
    for (const { id } of await this.list()) {
      const backup = await this.read(id)
      if (!backup.ok) return // what it holds cannot be told
      held.push(...backup.value.photos)
    }
    await this.photos.remove(await this.photos.without(held), this.now())
  }
}
