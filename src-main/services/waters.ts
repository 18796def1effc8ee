import type { DocumentFolder } from '@main/storage/document-folder'
import type { Handlers, Subject } from '@shared/contract/contract'
import type { Water } from '@shared/schema/water'
import { documentService } from './document-service'

export function waterHandlers(
  folder: DocumentFolder<Water>,
  newId: () => string,
): Handlers<Subject<'waters'>> {
  const service = documentService({ folder, newId })
  return {
    'waters:list': service.list,
    'waters:get': service.get,
    'waters:save': service.save,
    'waters:delete': service.delete,
    'waters:restore': service.restore,
    'waters:import': service.import,
    'waters:export': service.export,
    'waters:settle': service.settle,
  }
}
