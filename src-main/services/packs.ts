import type { PackFolder } from '@main/storage/pack-folder'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { err, ok } from '@shared/units/result'
import { packsInUse, withShipped } from './packs-in-use'

/** Rule packs: the shipped ones with the user's own rules laid over them. */
export function packHandlers(own: PackFolder): Handlers<Subject<'packs'>> {
  return {
    'packs:list': () => asResult(async () => ok(await packsInUse(own))),

    'packs:get': ({ region }) =>
      asResult(async () => {
        const found = (await packsInUse(own)).packs.find((pack) => pack.region === region)
        return found
          ? ok(found)
          : err({ code: 'not_found', message: `There are no rules for ${region} yet.`, path: 'region' })
      }),

    'packs:save': ({ pack }) =>
      asResult(async () => {
        const together = withShipped(pack)
        if (!together.ok) return together
        const { region } = together.value
        await own.save(region, pack)
        return ok({ region })
      }),

    'packs:delete': ({ region }) =>
      asResult(async () =>
        (await own.remove(region))
          ? ok({})
          : err({ code: 'not_found', message: `There are no rules of your own for ${region}.` }),
      ),
  }
}
