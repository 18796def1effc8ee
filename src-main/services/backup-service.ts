import { type BackupArchive, backupKind, type BackupReason } from '@main/storage/backup-archive'
import { dayOf } from '@main/storage/backup-policy'
import { parseDocument } from '@main/storage/document-file'
import type { DocumentFolder } from '@main/storage/document-folder'
import type { Journal } from '@main/storage/journal'
import type { PackFolder } from '@main/storage/pack-folder'
import type { SingleDocument } from '@main/storage/single-document'
import type { restoreTakes } from '@shared/contract/backup'
import type { Backup } from '@shared/schema/backup'
import type { OwnMaterials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import type { Settings } from '@shared/schema/settings'
import type { Water } from '@shared/schema/water'
import { err, ok, type Result } from '@shared/units/result'
import { type BackupChange, planRestore } from './restore-plan'

/** Everything that a backup holds, where it is kept. */
interface Holdings {
  readonly pots: DocumentFolder<Pot>
  readonly waters: DocumentFolder<Water>
  readonly packs: PackFolder
  readonly materials: SingleDocument<OwnMaterials>
  readonly settings: SingleDocument<Settings>
  readonly journal: Journal
}

export interface BackupOptions {
  readonly archive: BackupArchive
  readonly holdings: Holdings
  readonly machine: string
  readonly now: () => Date
}

export class BackupService {
  constructor(readonly options: BackupOptions) {}

  /** Everything there is now. What cannot be read is not in it; that stays where it is on disk. */
  async collect(): Promise<Backup> {
    const { holdings, machine, now } = this.options
    const { pots, waters, packs, materials, settings, journal } = holdings
    const documents = async <T extends { id: string; name: string }>(folder: DocumentFolder<T>) =>
      (await folder.reader.contents()).documents.map(({ stored }) => stored.document)
    return {
      format: 'potwright/backup',
      version: 1,
      writtenAt: now().toISOString(),
      machine,
      pots: await documents(pots),
      waters: await documents(waters),
      packs: [...(await packs.all()).packs].map(([region, pack]) => ({ ...pack, region })),
      materials: materials.current,
      settings: settings.current,
      journal: [...(await journal.load()).events],
    }
  }

  async create(reason: BackupReason): Promise<string> {
    return this.options.archive.keep(await this.collect(), reason)
  }

  /** Makes the backup of the day unless there is one, or nothing to keep yet. */
  async daily(): Promise<void> {
    const today = dayOf(this.options.now())
    const entries = await this.options.archive.list()
    if (entries.some(({ writtenAt }) => writtenAt.startsWith(today))) return
    const backup = await this.collect()
    if (backup.pots.length + backup.waters.length + backup.journal.length === 0) return
    await this.options.archive.keep(backup, 'daily')
  }

  async preview(
    id: string,
  ): Promise<Result<{ writtenAt: string; changes: BackupChange[]; untouched: number }>> {
    const backup = await this.options.archive.read(id)
    if (!backup.ok) return backup
    return ok({ writtenAt: backup.value.writtenAt, ...planRestore(await this.collect(), backup.value) })
  }

  /** Puts back what the backup holds, by id. Things it does not hold stay as they are. */
  async restore(
    id: string,
    take: (typeof restoreTakes)[number] = 'everything',
  ): Promise<Result<{ before: string; changes: BackupChange[] }>> {
    const backup = await this.options.archive.read(id)
    if (!backup.ok) return backup
    const plan = planRestore(await this.collect(), backup.value)
    const changes = take === 'missing' ? plan.changes.filter(({ effect }) => effect === 'add') : plan.changes
    const before = await this.create('before-restore')
    const { pots, waters, packs, materials, settings, journal } = this.options.holdings
    const wanted = new Set(
      changes.filter(({ effect }) => effect !== 'same').map(({ subject, id: of }) => `${subject}/${of}`),
    )
    for (const pot of backup.value.pots) if (wanted.has(`pots/${pot.id}`)) await pots.put(pot)
    for (const water of backup.value.waters) if (wanted.has(`waters/${water.id}`)) await waters.put(water)
    for (const pack of backup.value.packs)
      if (wanted.has(`packs/${pack.region}`)) await packs.save(pack.region, pack)
    if (wanted.has('materials/own')) await materials.replace(backup.value.materials)
    if (wanted.has('settings/own')) await settings.replace(backup.value.settings)
    await journal.absorb(backup.value.journal)
    return ok({ before, changes })
  }

  /** Takes in the text of a backup made elsewhere, to be looked at and restored like one of our own. */
  async takeIn(text: string): Promise<Result<{ id: string }>> {
    const read = parseDocument(text, backupKind)
    if (!read.ok) return err(read.error)
    return ok({ id: await this.options.archive.keep(read.value, 'taken-in') })
  }
}
