import type { PackFolder, PackJson } from '@main/storage/pack-folder'
import { asResult } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { inUse } from '@shared/rules/own-rules'
import { parsePack } from '@shared/rules/pack'
import { packFiles } from '@shared/rules/packs'
import type { RulePack } from '@shared/schema/rule-pack'
import { err, ok, type Result } from '@shared/units/result'

/**
 * Rule packs: the shipped ones, and the user's own, laid over or standing in for those of the same region. A pack
 * of the user's that cannot be used is named, and the shipped one stays in use.
 */
export function packHandlers(own: PackFolder): Handlers<Subject<'packs'>> {
  return {
    'packs:list': () =>
      asResult(async () => {
        const { packs: mine, problems } = await own.all()
        const read = [...mine].map(([region, pack]) => ({ region, read: merged(region, pack) }))
        const usable = new Map(
          read.flatMap((one): [string, RulePack][] => (one.read.ok ? [[one.region, one.read.value]] : [])),
        )
        const packs = [
          ...[...packFiles].flatMap(([region, pack]) =>
            usable.has(region) ? [] : [{ region, owner: 'built-in' as const, pack }],
          ),
          ...[...usable].map(([region, pack]) => ({ region, owner: 'user' as const, pack: { ...pack } })),
        ]
        return ok({
          packs: packs.sort((a, b) => (a.region < b.region ? -1 : 1)),
          problems: [
            ...problems,
            ...read.flatMap(({ region, read: one }) =>
              one.ok ? [] : [{ file: `${region}.rules.json`, message: one.error.message }],
            ),
          ],
        })
      }),

    'packs:get': ({ region }) =>
      asResult(async () => {
        const mine = (await own.all()).packs.get(region)
        const builtIn = packFiles.get(region)
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
        const read = parsePack(pack)
        if (!read.ok) return read
        const { region } = read.value
        const fits = merged(region, pack)
        if (!fits.ok) return fits
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

/** The user's pack of a region as it is judged by, with the shipped one below it. */
function merged(region: string, pack: PackJson): Result<RulePack> {
  const mine = parsePack(pack)
  if (!mine.ok) return mine
  const shipped = packFiles.get(region)
  const base = shipped && parsePack(shipped)
  return inUse(base?.ok ? base.value : undefined, mine.value)
}
