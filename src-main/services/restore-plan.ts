import { revisionOf } from '@main/storage/stored-document'
import type { Reply } from '@shared/contract/contract'
import type { Backup } from '@shared/schema/backup'

export type BackupChange = Reply<'backup:preview'>['changes'][number]

/** What restoring a backup over what there is now would do, without doing it. */
export function planRestore(here: Backup, backup: Backup): { changes: BackupChange[]; untouched: number } {
  const changes: BackupChange[] = [
    ...each('pots', here.pots, backup.pots, byId),
    ...each('waters', here.waters, backup.waters, byId),
    ...each('packs', here.packs, backup.packs, ({ region }) => ({ id: region, name: region })),
    ...each('materials', [here.materials], [backup.materials], () => ({ id: 'own', name: 'Own materials' })),
    ...each('settings', [here.settings], [backup.settings], () => ({ id: 'own', name: 'Settings' })),
    ...events(here, backup),
  ]
  const held = new Set(changes.map(({ subject, id }) => `${subject}/${id}`))
  const ours = [
    ...here.pots.map(({ id }) => `pots/${id}`),
    ...here.waters.map(({ id }) => `waters/${id}`),
    ...here.packs.map(({ region }) => `packs/${region}`),
  ]
  return { changes, untouched: ours.filter((key) => !held.has(key)).length }
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
    return { subject, id, name, effect: effectOf(revision, revisionOf(item)) }
  })
}

function effectOf(here: string | undefined, there: string): BackupChange['effect'] {
  if (here === undefined) return 'add'
  return here === there ? 'same' : 'change'
}

function events(here: Backup, backup: Backup): BackupChange[] {
  const known = new Set(here.journal.map(({ id }) => id))
  const missing = backup.journal.filter(({ id }) => !known.has(id)).length
  return missing === 0
    ? []
    : [
        {
          subject: 'journal',
          id: 'events',
          name: `${missing} log ${missing === 1 ? 'entry' : 'entries'}`,
          effect: 'add',
        },
      ]
}

const byId = ({ id, name }: { id: string; name: string }) => ({ id, name })
