import { revisionOf } from '@main/storage/stored-document'
import type { Reply } from '@shared/contract/contract'
import type { Backup, BackupPhoto } from '@shared/schema/backup'

export type BackupChange = Reply<'backup:preview'>['changes'][number]
type Effect = BackupChange['effect']

/** What restoring a backup over what there is now would do, without doing it. */
export interface RestorePlan {
  /** Of all but the photos. */
  readonly changes: BackupChange[]
  readonly untouched: number
  /** Photos of the backup by what would become of them. */
  readonly photos: PhotosByEffect
}

type PhotosByEffect = Readonly<Record<Effect, readonly BackupPhoto[]>>

export function planRestore(here: Backup, backup: Backup): RestorePlan {
  const changes: BackupChange[] = [
    ...each('pots', here.pots, backup.pots, byId),
    ...each('waters', here.waters, backup.waters, byId),
    ...each('packs', here.packs, backup.packs, ({ region }) => ({ id: region, name: region })),
    ...each('materials', [here.materials], [backup.materials], () => ({ id: 'own', name: 'Own materials' })),
    ...each('settings', [here.settings], [backup.settings], () => ({ id: 'own', name: 'Settings' })),
    ...events(here, backup),
  ]
  const held = new Set([
    ...changes.map(({ subject, id }) => `${subject}/${id}`),
    ...backup.photos.map(({ file }) => `photos/${file}`),
  ])
  const ours = [
    ...here.pots.map(({ id }) => `pots/${id}`),
    ...here.waters.map(({ id }) => `waters/${id}`),
    ...here.packs.map(({ region }) => `packs/${region}`),
    ...here.photos.map(({ file }) => `photos/${file}`),
  ]
  const photos = byEffect(here.photos, backup.photos)
  return { changes, photos, untouched: ours.filter((key) => !held.has(key)).length }
}

/** What becomes of photos, by number alone, less those that cannot be read. */
export function changesOfPhotos(photos: PhotosByEffect, lost: readonly BackupPhoto[]): BackupChange[] {
  return (['add', 'change', 'same'] as const).flatMap((effect) => {
    const count = photos[effect].filter((photo) => !lost.includes(photo)).length
    return count === 0 ? [] : [{ subject: 'photos', id: effect, effect, count }]
  })
}

function each<T>(
  subject: BackupChange['subject'],
  here: readonly T[],
  there: readonly T[],
  named: (item: T) => { id: string; name: string },
): BackupChange[] {
  const revisions = new Map(here.map((item) => [named(item).id, revisionOf(item)]))
  return there.map((item) => {
    const { id, name } = named(item)
    const revision = revisions.get(id)
    return { subject, id, name, effect: effectOf(revision, revisionOf(item)), count: 1 }
  })
}

function byEffect(here: readonly BackupPhoto[], there: readonly BackupPhoto[]): PhotosByEffect {
  const contents = new Map(here.map(({ file, sha256 }) => [file, sha256]))
  const by: Record<Effect, BackupPhoto[]> = { add: [], change: [], same: [] }
  for (const photo of there) by[effectOf(contents.get(photo.file), photo.sha256)].push(photo)
  return by
}

function effectOf(here: string | undefined, there: string): Effect {
  if (here === undefined) return 'add'
  return here === there ? 'same' : 'change'
}

function events(here: Backup, backup: Backup): BackupChange[] {
  const known = new Set(here.journal.map(({ id }) => id))
  const count = backup.journal.filter(({ id }) => !known.has(id)).length
  return count === 0 ? [] : [{ subject: 'journal', id: 'events', effect: 'add', count }]
}

const byId = ({ id, name }: { id: string; name: string }) => ({ id, name })
