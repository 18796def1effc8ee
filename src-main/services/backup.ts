import { openMovingFile, packMovingFile } from '@main/storage/moving-file'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { ok, type Result } from '@shared/units/result'
import type { BackupService } from './backup-service'
import { Incoming, Outgoing } from './transfers'

export function backupHandlers(backups: BackupService, newId: () => string): Handlers<Subject<'backup'>> {
  const { archive, holdings } = backups.options
  const outgoing = new Outgoing(newId)
  const incoming = new Incoming(archive.folder, newId)
  return {
    'backup:list': () => asResult(async () => ok(await archive.list())),
    'backup:create': () => asResult(async () => ok(await backups.create('by-hand'))),
    'backup:preview': ({ id }) => asResult(() => backups.preview(id)),
    'backup:restore': ({ id, take }) => asResult(() => backups.restore(id, take)),
    'backup:export': () =>
      asResult(async () => {
        const { backup, lost } = await backups.everything()
        const { stream, bytes } = packMovingFile(backup, (photo) => holdings.photos.pathOf(photo))
        return ok({
          transfer: await outgoing.begin(stream),
          fileName: `potwright-${backup.writtenAt.slice(0, 10)}.backup.zip`,
          bytes,
          lost,
        })
      }),
    'backup:export-part': ({ transfer }) => asResult(() => outgoing.next(transfer)),
    'backup:import-part': ({ transfer, base64 }) =>
      asResult(() => incoming.add(transfer, Buffer.from(base64, 'base64'))),
    'backup:import': ({ transfer }) =>
      asResult(() => incoming.take(transfer, (path) => takeIn(backups, path))),
  }
}

async function takeIn(backups: BackupService, path: string): Promise<Result<{ id: string }>> {
  const opened = await openMovingFile(path)
  if (!opened.ok) return opened
  const { backup, photo, close } = opened.value
  try {
    return ok({ id: await backups.takeIn(backup, photo) })
  } finally {
    close()
  }
}
