import type { SingleDocument } from '@main/storage/single-document'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import type { OwnMaterials } from '@shared/schema/materials'
import { ok } from '@shared/units/result'

export function materialHandlers(
  file: SingleDocument<OwnMaterials>,
  onSaved: () => Promise<void>,
): Handlers<Subject<'materials'>> {
  return {
    'materials:get': () => Promise.resolve(ok(file.current)),
    'materials:save': (own) =>
      asResult(async () => {
        const saved = await file.replace(own)
        await onSaved()
        return saved
      }),
  }
}
