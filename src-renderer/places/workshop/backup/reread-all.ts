import { bench } from '@renderer/state/bench.svelte'
import { locker } from '@renderer/state/locker.svelte'
import { materials } from '@renderer/state/materials.svelte'
import { packs } from '@renderer/state/packs.svelte'
import { settings } from '@renderer/state/settings.svelte'
import { shelf, waters } from '@renderer/state/shelf'

/** Reads everything that is kept anew, after much of it changed at once. */
export async function rereadAll(): Promise<void> {
  await Promise.all([settings.load(), shelf.load(), waters.load(), packs.load(), materials.load()])
  bench.resume()
  if (locker.loaded) await locker.load()
}
