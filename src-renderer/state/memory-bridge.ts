import type { Bridge } from '@shared/contract/bridge'
import { contract } from '@shared/contract/contract'
import { inUse } from '@shared/rules/own-rules'
import { parsePack, shippedPack } from '@shared/rules/pack'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Settings } from '@shared/schema/settings'
import { defaultSettings } from '@shared/schema/settings'
import { err, ok, type Result } from '@shared/units/result'
import * as v from 'valibot'

type Kept = { document: { id: string; name: string }; revision: string; savedAt: string }
type Packs = readonly { region: string; owner: 'built-in' | 'user'; pack: Record<string, unknown> }[]

/**
 * Services that live as long as a test: documents and settings kept in memory, asked through the same contract as
 * the real ones. A request that does not fit the contract is a fault of the caller and throws.
 */
export function memoryBridge(start: { settings?: Partial<Settings>; packs?: Packs } = {}): Bridge {
  let settings: Settings = { ...defaultSettings, ...start.settings }
  let saves = 0
  const folders = { pots: new Map<string, Kept>(), waters: new Map<string, Kept>() }
  const removed = new Map<string, Kept>()
  const ownPacks = new Map<string, RulePack>()
  const missing = err({ code: 'not_found' as const, message: 'There is no such document.' })
  const changed = err({ code: 'conflict' as const, message: 'It was changed elsewhere meanwhile.' })

  function documents(
    folder: Map<string, Kept>,
    verb: string,
    request: Record<string, unknown>,
  ): Result<unknown> {
    const id = String(request['id'] ?? (request['document'] as Kept['document'] | undefined)?.id ?? '')
    const kept = folder.get(id)
    switch (verb) {
      case 'list':
        return ok({ items: [...folder.values()], problems: [] })
      case 'save': {
        if (kept?.revision !== request['revision']) return changed
        saves += 1
        const stored: Kept = {
          document: request['document'] as Kept['document'],
          revision: saves.toString(16).padStart(16, '0'),
          savedAt: '2026-11-25T09:00:00.000Z',
        }
        folder.set(id, stored)
        return ok(stored)
      }
      case 'delete':
        if (!kept) return missing
        removed.set(id, kept)
        folder.delete(id)
        return ok({})
      case 'restore': {
        const back = removed.get(id)
        if (!back) return missing
        folder.set(id, back)
        return ok(back)
      }
      case 'export':
        return kept
          ? ok({ fileName: `${kept.document.name}.json`, text: JSON.stringify(kept.document) })
          : missing
      default:
        return kept ? ok(kept) : missing
    }
  }

  /** The packs to begin with count as shipped; what is saved is laid over them, as the real service does. */
  function packAnswer(verb: string, request: Record<string, unknown>): Result<unknown> {
    const region = String(request['region'] ?? '')
    if (verb === 'save') {
      const read = parsePack(request['pack'])
      if (read.ok) ownPacks.set(read.value.region, read.value)
      return read.ok ? ok({ region: read.value.region }) : read
    }
    if (verb === 'delete') return ownPacks.delete(region) ? ok({}) : missing
    const shipped = new Map((start.packs ?? []).map((one) => [one.region, shippedPack(one.pack)]))
    const regions = [...new Set([...shipped.keys(), ...ownPacks.keys()])]
    return ok({
      packs: regions.flatMap((one) => packInUse(one, shipped.get(one), ownPacks.get(one))),
      problems: [],
    })
  }

  function answer(channel: string, request: Record<string, unknown>): Result<unknown> {
    const [subject = '', verb = ''] = channel.split(':')
    if (subject === 'pots' || subject === 'waters') return documents(folders[subject], verb, request)
    if (channel === 'settings:set') settings = { ...settings, ...(request['set'] as Partial<Settings>) }
    if (subject === 'settings') return ok(settings)
    if (subject === 'packs') return packAnswer(verb, request)
    return err({ code: 'unavailable', message: `${channel} is not kept in memory.` })
  }

  return (channel, request) => {
    const asked = v.parse(contract[channel].request, structuredClone(request))
    // Which reply belongs to which channel is known to the contract, not to the type checker here.
    return Promise.resolve(answer(channel, asked as Record<string, unknown>) as never)
  }
}

function packInUse(region: string, builtIn?: RulePack, own?: RulePack): Record<string, unknown>[] {
  if (!own) return builtIn ? [{ region, owner: 'built-in', pack: builtIn, builtIn }] : []
  const merged = inUse(builtIn, own)
  return merged.ok
    ? [{ region, owner: 'user', pack: merged.value, own, ...(builtIn ? { builtIn } : {}) }]
    : []
}
