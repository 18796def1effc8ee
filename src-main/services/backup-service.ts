import type { BackupArchive, BackupReason } from '@main/storage/backup-archive'
import { dayOf } from '@main/storage/backup-policy'
import type { DocumentFolder } from '@main/storage/document-folder'
import type { Journal } from '@main/storage/journal'
import type { PackFolder } from '@main/storage/pack-folder'
import type { PhotoFolder } from '@main/storage/photo-folder'
import type { SingleDocument } from '@main/storage/single-document'
import type { restoreTakes } from '@shared/contract/backup'
import type { Backup, BackupPhoto } from '@shared/schema/backup'
import type { OwnMaterials } from '@shared/schema/materials'
import type { Pot } from '@shared/schema/pot'
import type { Settings } from '@shared/schema/settings'
import type { Water } from '@shared/schema/water'
import { ok, type Result } from '@shared/units/result'
import { eachPhoto } from './each-photo'
import { photoNames } from './photo-names'
import { type BackupChange, changesOfPhotos, planRestore } from './restore-plan'

/** Everything that a backup holds, where it is kept. */
interface Holdings {
  readonly pots: DocumentFolder<Pot>
  readonly waters: DocumentFolder<Water>
  readonly packs: PackFolder
  readonly materials: SingleDocument<OwnMaterials>
  readonly settings: SingleDocument<Settings>
  readonly journal: Journal
  readonly photos: PhotoFolder
}

export interface BackupOptions {
  readonly archive: BackupArchive
  readonly holdings: Holdings
  readonly machine: string
  readonly now: () => Date
  /** Told of photos done, and of how many. */
  readonly tell: (done: number, of: number) => void
}

/** Everything there is now, and the photos that could not be read, by file. */
interface Collected {
  readonly backup: Backup
  readonly unreadable: readonly string[]
}

export class BackupService {
  constructor(readonly options: BackupOptions) {}

  /** Everything there is now. What cannot be read is not in it; that stays where it is on disk. */
  async #collect(): Promise<Collected> {
    const { holdings, machine, now } = this.options
    const { pots, waters, packs, materials, settings, journal } = holdings
    const documents = async <T extends { id: string; name: string }>(folder: DocumentFolder<T>) =>
      (await folder.reader.contents()).documents.map(({ stored }) => stored.document)
    const { photos, unreadable } = await holdings.photos.all()
    const backup: Backup = {
      format: 'potwright/backup',
      version: 2,
      writtenAt: now().toISOString(),
      machine,
      pots: await documents(pots),
      waters: await documents(waters),
      packs: [...(await packs.all()).packs].map(([region, pack]) => ({ ...pack, region })),
      materials: materials.current,
      settings: settings.current,
      journal: [...(await journal.load()).events],
      photos,
    }
    return { backup, unreadable }
  }

  /** Everything there is now, and what of it cannot be read, for whoever takes it elsewhere. */
  async everything(): Promise<{ backup: Backup; lost: string[] }> {
    const { backup, unreadable } = await this.#collect()
    return { backup, lost: this.#named(unreadable, backup) }
  }

  async create(reason: BackupReason): Promise<{ id: string; lost: string[] }> {
    return this.#keep(await this.#collect(), reason)
  }

  /** Makes the backup of the day unless there is one, or nothing to keep yet; returns what is not in it. */
  async daily(): Promise<string[]> {
    const today = dayOf(this.options.now())
    const entries = await this.options.archive.list()
    if (entries.some(({ writtenAt }) => writtenAt.startsWith(today))) return []
    const collected = await this.#collect()
    const { pots, waters, journal } = collected.backup
    if (pots.length + waters.length + journal.length === 0) return []
    return (await this.#keep(collected, 'daily')).lost
  }

  async preview(
    id: string,
  ): Promise<Result<{ writtenAt: string; changes: BackupChange[]; untouched: number; lost: string[] }>> {
    const { archive } = this.options
    const read = await archive.read(id)
    if (!read.ok) return read
    const backup = read.value
    const { changes, untouched, photos } = planRestore((await this.#collect()).backup, backup)
    const lost: BackupPhoto[] = []
    for (const photo of [...photos.add, ...photos.change])
      if (!(await archive.photos.has(photo))) lost.push(photo)
    return ok({
      writtenAt: backup.writtenAt,
      changes: [...changes, ...changesOfPhotos(photos, lost)],
      untouched,
      lost: this.#named(lost.map(nameOf), backup),
    })
  }

  /**
   * Puts back what the backup holds, by id. Things it does not hold stay as they are, and so does a photo whose kept
   * copy is damaged: the rest is put back without it.
   */
  async restore(
    id: string,
    take: (typeof restoreTakes)[number] = 'everything',
  ): Promise<Result<{ before: string; changes: BackupChange[]; lost: string[] }>> {
    const { archive, tell } = this.options
    const read = await archive.read(id)
    if (!read.ok) return read
    const backup = read.value
    const collected = await this.#collect()
    const plan = planRestore(collected.backup, backup)
    const before = (await this.#keep(collected, 'before-restore')).id
    const { pots, waters, packs, materials, settings, journal, photos } = this.options.holdings
    const taken = ({ effect }: BackupChange) => effect === 'add' || take === 'everything'
    const wanted = new Set(
      plan.changes
        .filter((change) => change.effect !== 'same' && taken(change))
        .map(({ subject, id: of }) => `${subject}/${of}`),
    )
    for (const pot of backup.pots) if (wanted.has(`pots/${pot.id}`)) await pots.put(pot)
    for (const water of backup.waters) if (wanted.has(`waters/${water.id}`)) await waters.put(water)
    for (const pack of backup.packs)
      if (wanted.has(`packs/${pack.region}`)) await packs.save(pack.region, pack)
    if (wanted.has('materials/own')) await materials.replace(backup.materials)
    if (wanted.has('settings/own')) await settings.replace(backup.settings)
    const lost = await eachPhoto(
      [...plan.photos.add, ...(take === 'everything' ? plan.photos.change : [])],
      (photo) => photos.put(photo, archive.photos.read(photo)),
      tell,
    )
    // Last, so that no event names a photo that is still to come.
    await journal.absorb(backup.journal)
    const changes = [...plan.changes, ...changesOfPhotos(plan.photos, lost)].filter(taken)
    return ok({ before, changes, lost: this.#named(lost.map(nameOf), backup) })
  }

  /** Takes in a backup made elsewhere, to be looked at and restored like one of our own. */
  async takeIn(backup: Backup, photo: (photo: BackupPhoto) => AsyncIterable<Uint8Array>): Promise<string> {
    const { archive, tell } = this.options
    await eachPhoto(backup.photos, (one) => archive.photos.keep(one, photo(one)), tell)
    return archive.keep(backup, 'taken-in')
  }

  /** What of a backup cannot be read, said so that a person knows what it is. */
  #named(files: readonly string[], { journal }: Backup): string[] {
    return photoNames(files, journal, this.options.now())
  }

  async #keep(
    { backup, unreadable }: Collected,
    reason: BackupReason,
  ): Promise<{ id: string; lost: string[] }> {
    const { archive, holdings, tell } = this.options
    const damaged = await eachPhoto(
      backup.photos,
      (photo) => archive.photos.keep(photo, holdings.photos.read(photo)),
      tell,
    )
    const photos = backup.photos.filter((photo) => !damaged.includes(photo))
    const id = await archive.keep({ ...backup, photos }, reason)
    return { id, lost: this.#named([...unreadable, ...damaged.map(nameOf)], backup) }
  }
}

const nameOf = ({ file }: BackupPhoto) => file
