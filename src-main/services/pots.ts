import type { DocumentFolder } from '@main/storage/document-folder'
import type { Handlers, Subject } from '@shared/contract/contract'
import type { Pot } from '@shared/schema/pot'
import { documentService } from './document-service'

export function potHandlers(folder: DocumentFolder<Pot>, newId: () => string): Handlers<Subject<'pots'>> {
  const service = documentService({ folder, newId })
  return {
    'pots:list': service.list,
    'pots:get': service.get,
    'pots:save': service.save,
    'pots:delete': service.delete,
    'pots:restore': service.restore,
    'pots:import': service.import,
    'pots:export': service.export,
    'pots:settle': service.settle,
  }
}
