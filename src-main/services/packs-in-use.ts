import type { PackFolder, PackJson, PackProblem } from '@main/storage/pack-folder'
import { inUse } from '@shared/rules/own-rules'
import { parsePack } from '@shared/rules/pack'
import { packFiles, readPacks } from '@shared/rules/packs'
import type { RulePack } from '@shared/schema/rule-pack'
import type { Result } from '@shared/units/result'

export interface PackInUse {
  readonly region: string
  readonly owner: 'built-in' | 'user'
  readonly pack: RulePack
  readonly own?: PackJson
  /** The shipped one beside the user's own. */
  readonly builtIn?: RulePack
}

// Shipped packs are read once: they do not change while the program runs.
let read: ReadonlyMap<string, RulePack> | undefined
const shipped = () => (read ??= readPacks())

/** Reads the shipped packs before they are asked for, as when the page that will ask is still starting. */
export function readShippedAhead(): void {
  setImmediate(shipped)
}

/** The packs to judge by, by region, and the user's files that cannot be used. */
export async function packsInUse(own: PackFolder): Promise<{ packs: PackInUse[]; problems: PackProblem[] }> {
  const { packs: mine, problems } = await own.all()
  const packs: PackInUse[] = []
  for (const region of [...new Set([...packFiles.keys(), ...mine.keys()])].sort()) {
    const builtIn = shipped().get(region)
    const ownPack = mine.get(region)
    const merged = ownPack && withShipped(ownPack)
    if (merged && !merged.ok) problems.push(notInUse(region, builtIn, merged.error.message))
    const pack = merged?.ok ? merged.value : builtIn
    if (pack)
      packs.push({
        region,
        owner: merged?.ok ? 'user' : 'built-in',
        pack,
        ...(ownPack ? { own: ownPack } : {}),
        ...(ownPack && builtIn ? { builtIn } : {}),
      })
  }
  return { packs, problems }
}

/** The rules to judge by, by region. */
export async function rulesInUse(own: PackFolder): Promise<(region: string) => RulePack | undefined> {
  const byRegion = new Map((await packsInUse(own)).packs.map(({ region, pack }) => [region, pack]))
  return (region) => byRegion.get(region)
}

/** A pack of the user's laid together with the shipped one of its region, or what is wrong with it. */
export function withShipped(own: PackJson): Result<RulePack> {
  const pack = parsePack(own)
  return pack.ok ? inUse(shipped().get(pack.value.region), pack.value) : pack
}

function notInUse(region: string, builtIn: RulePack | undefined, message: string): PackProblem {
  const file = `${region}.rules.json`
  const instead = builtIn ? `; the shipped rules for ${builtIn.name} are` : ''
  return { file, message: `${file} is not in use${instead}. ${message}` }
}
