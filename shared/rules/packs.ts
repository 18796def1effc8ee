import { shippedPack } from './pack'
import type { RulePack } from '@shared/schema/rule-pack'

// Resolved when the program is built: every pack in the folder ships, and a new one needs no line here.
const files = import.meta.glob<Record<string, unknown>>('../../assets/rules/*.json', {
  eager: true,
  import: 'default',
})

/** Every pack that ships, unread, by region code. */
export const packFiles: ReadonlyMap<string, Record<string, unknown>> = new Map(
  Object.entries(files)
    .map(([path, raw]): [string, Record<string, unknown>] => [path.replace(/^.*\/(.+)\.json$/, '$1'), raw])
    .toSorted(([a], [b]) => a.localeCompare(b)),
)

/** Reads and checks every pack that ships; one with a fault in it is a bug and throws. */
export function readPacks(): ReadonlyMap<string, RulePack> {
  return new Map([...packFiles].map(([region, raw]) => [region, shippedPack(raw)]))
}
