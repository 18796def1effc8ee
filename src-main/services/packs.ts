import type { PackFolder } from '@main/storage/pack-folder'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { readDocument } from '@shared/schema/read-document'
import { RulePackSchema } from '@shared/schema/rule-pack'
import { err, ok } from '@shared/units/result'
import { builtInPacks } from './built-in-packs'

/** Rule packs: the shipped ones, and the user's own, which stand in for those of the same region. */
export function packHandlers(own: PackFolder): Handlers<Subject<'packs'>> {
  return {
    'packs:list': () =>
      asResult(async () => {
        const { packs, problems } = await own.all()
        const inUse = [
          ...[...builtInPacks].map(([region, pack]) => ({ region, owner: 'built-in' as const, pack })),
          ...[...packs].map(([region, pack]) => ({ region, owner: 'user' as const, pack })),
        ].filter(({ region, owner }) => owner === 'user' || !packs.has(region))
        return ok({ packs: inUse.sort((a, b) => (a.region < b.region ? -1 : 1)), problems: [...problems] })
      }),

    'packs:get': ({ region }) =>
      asResult(async () => {
        const mine = (await own.all()).packs.get(region)
        const builtIn = builtInPacks.get(region)
        const pack = mine ?? builtIn
        if (!pack)
          return err({ code: 'not_found', message: `There are no rules for ${region} yet.`, path: 'region' })
        return ok({
          region,
          owner: mine ? 'user' : 'built-in',
          pack,
          ...(mine && builtIn ? { builtIn } : {}),
        })
      }),

    'packs:save': ({ pack }) =>
      asResult(async () => {
        const read = readDocument(RulePackSchema, pack, 'rule pack')
        if (!read.ok) return read
        await own.save(read.value.region, pack)
        return ok({ region: read.value.region })
      }),

    'packs:delete': ({ region }) =>
      asResult(async () =>
        (await own.remove(region))
          ? ok({})
          : err({ code: 'not_found', message: `There are no rules of your own for ${region}.` }),
      ),
  }
}
