import { documentText } from '@main/storage/document-file'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { ok } from '@shared/units/result'
import type { BackupService } from './backup-service'

export function backupHandlers(backups: BackupService): Handlers<Subject<'backup'>> {
  return {
    'backup:list': () => asResult(async () => ok(await backups.options.archive.list())),
    'backup:create': () => asResult(async () => ok({ id: await backups.create('by-hand') })),
    'backup:preview': ({ id }) => asResult(() => backups.preview(id)),
    'backup:restore': ({ id, take }) => asResult(() => backups.restore(id, take)),
    'backup:export': () =>
      asResult(async () => {
        const backup = await backups.collect()
        return ok({
          fileName: `potwright-${backup.writtenAt.slice(0, 10)}.backup.json`,
          text: documentText(backup),
        })
      }),
    'backup:import': ({ text }) => asResult(() => backups.takeIn(text)),
  }
}
