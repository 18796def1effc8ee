import type { SingleDocument } from '@main/storage/single-document'
import { SerialQueue } from '@main/storage/serial-queue'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import type { Settings } from '@shared/schema/settings'
import { ok } from '@shared/units/result'

export function settingsHandlers(
  file: SingleDocument<Settings>,
  onSaved: () => Promise<void>,
): Handlers<Subject<'settings'>> {
  const queue = new SerialQueue() // two changes at once must both arrive
  return {
    'settings:get': () => Promise.resolve(ok(file.current)),
    'settings:set': ({ set, clear = [] }) =>
      queue.run(() =>
        asResult(async () => {
          const kept = Object.entries(file.current).filter(([field]) => !(clear as string[]).includes(field))
          const next = { ...Object.fromEntries(kept), ...set } as Settings
          const saved = await file.replace(next)
          await onSaved()
          return saved
        }),
      ),
  }
}
