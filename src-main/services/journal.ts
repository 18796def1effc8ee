import type { Journal } from '@main/storage/journal'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { ok } from '@shared/units/result'

export function journalHandlers(journal: Journal): Handlers<Subject<'journal'>> {
  return {
    'journal:list': () =>
      asResult(async () => {
        const { events, problems } = await journal.load()
        return ok({ events: [...events], problems })
      }),
    'journal:append': ({ events }) =>
      asResult(async () => {
        const added = await journal.append(events)
        return added.ok ? ok({ events: added.value }) : added
      }),
    'journal:repair': () => asResult(() => journal.setBadLinesAside()),
  }
}
