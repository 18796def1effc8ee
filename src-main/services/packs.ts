import { join } from 'node:path'
import { rm } from 'node:fs/promises'
import { documentText, parseJson, readIfThere } from '@main/storage/document-file'
import { type Disk, realDisk, writeDurably } from '@main/storage/durable-write'
import { namesIn } from '@main/storage/folder-reader'
import { asResult, isMissing } from '@main/storage/storage-fault'
import type { Handlers, Subject } from '@shared/contract/contract'
import { readDocument } from '@shared/schema/read-document'
import { RulePackSchema } from '@shared/schema/rule-pack'
import { err, ok } from '@shared/units/result'
import { builtInPacks } from './built-in-packs'

type Pack = Record<string, unknown>

const suffix = '.rules.json'
const regionOf = (pack: Pack) => pack['region']

/** Rule packs: the shipped ones, and the user's own in `packs/`, which stand in for those of the same region. */
export function packHandlers(
  dataFolder: string,
  onWritten: (fileName: string) => Promise<void>,
  disk: Disk = realDisk,
): Handlers<Subject<'packs'>> {
  const folder = join(dataFolder, 'packs')

  async function own(): Promise<{ packs: Map<string, Pack>; problems: { file: string; message: string }[] }> {
    const packs = new Map<string, Pack>()
    const problems: { file: string; message: string }[] = []
    const files = (await namesIn(folder))
      .filter((name) => name.endsWith(suffix) && !name.startsWith('.'))
      .sort()
    for (const file of files) {
      const pack = parseJson((await readIfThere(join(folder, file))) ?? '')
      const region = file.slice(0, -suffix.length)
      if (pack && regionOf(pack) === region) packs.set(region, pack)
      else if (pack)
        problems.push({ file, message: `${file} is for ${String(regionOf(pack))}; it was left alone.` })
      else problems.push({ file, message: `${file} is damaged. It was left as it is and is not in use.` })
    }
    return { packs, problems }
  }

  return {
    'packs:list': () =>
      asResult(async () => {
        const { packs, problems } = await own()
        const regions = [...new Set([...builtInPacks.keys(), ...packs.keys()])].sort()
        return ok({
          packs: regions.map((region) => {
            const mine = packs.get(region)
            return {
              region,
              owner: mine ? ('user' as const) : ('built-in' as const),
              pack: mine ?? builtInPacks.get(region) ?? {},
            }
          }),
          problems,
        })
      }),

    'packs:get': ({ region }) =>
      asResult(async () => {
        const mine = (await own()).packs.get(region)
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
        const { region } = read.value
        await writeDurably(join(folder, `${region}${suffix}`), documentText(pack), disk)
        await onWritten(`${region}${suffix}`)
        return ok({ region })
      }),

    'packs:delete': ({ region }) =>
      asResult(async () => {
        try {
          await rm(join(folder, `${region}${suffix}`))
        } catch (thrown) {
          if (!isMissing(thrown)) throw thrown
          return err({ code: 'not_found', message: `There are no rules of your own for ${region}.` })
        }
        await onWritten(`${region}${suffix}`)
        return ok({})
      }),
  }
}
