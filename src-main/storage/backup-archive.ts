import { readFile, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { promisify } from 'node:util'
import { gunzip, gzip } from 'node:zlib'
import { type Backup, BackupSchema } from '@shared/schema/backup'
import { err, type Result } from '@shared/units/result'
import { backupsToKeep } from './backup-policy'
import { parseDocument } from './document-file'
import { writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
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

export const backupKind = { schema: BackupSchema, migrations: [], called: 'backup' }

const suffix = '.backup.json.gz'
const namePattern = /^(\d{8}-\d{6})-([a-z-]+)\.backup\.json\.gz$/

/** The folder of backups, packed, named by when and why they were made. Old ones go as the policy says. */
export class BackupArchive {
  constructor(
    readonly folder: string,
    readonly now: () => Date,
  ) {}

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

  async keep(backup: Backup, reason: BackupReason): Promise<string> {
    const id = `${timeStamp(this.now())}-${reason}`
    const packed = await promisify(gzip)(JSON.stringify(backup))
    await writeDurably(join(this.folder, `${id}${suffix}`), packed)
    await this.#prune(id)
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

  async #prune(justMade: string): Promise<void> {
    const entries = await this.list()
    const kept = backupsToKeep(
      entries.map(({ writtenAt }) => new Date(writtenAt)),
      this.now(),
    ).map((at) => at.toISOString())
    for (const { id, writtenAt } of entries)
      if (id !== justMade && !kept.includes(writtenAt))
        await rm(join(this.folder, `${id}${suffix}`), { force: true })
  }
}
