import { packsInUse, type PackInUse } from '@main/services/packs-in-use'
import { defaultDataFolder, homeFolder } from '@main/storage/home'
import { PackFolder } from '@main/storage/pack-folder'
import type { Terminal } from './command'

/** The packs to judge by, with the user's own rules where the data folder holds some. Nothing is written. */
export async function packsFor(terminal: Terminal, dataFolder?: string): Promise<PackInUse[]> {
  const folder = dataFolder ?? defaultDataFolder(homeFolder(terminal.env, terminal.platform))
  const { packs, problems } = await packsInUse(new PackFolder(folder, () => Promise.resolve()))
  for (const { message } of problems) terminal.writeError(`${message}\n`)
  return packs
}
