import { readdir, rm, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { temporaryPrefix } from './durable-write'
import { isMissing } from './storage-fault'

// Another machine's save may be on its way here; nothing takes this long.
const oldEnoughMs = 60 * 60 * 1000

/** Removes temporary files that killed processes left behind. */
export async function sweepTemporary(dataFolder: string, now: Date): Promise<void> {
  for (const entry of await entriesOf(dataFolder)) {
    if (!entry.name.startsWith(temporaryPrefix)) continue
    const path = join(entry.parentPath, entry.name)
    const found = await stat(path).catch(() => undefined)
    if (found && now.getTime() - found.mtimeMs > oldEnoughMs)
      await rm(path, { force: true }).catch(() => undefined)
  }
}

async function entriesOf(folder: string) {
  try {
    return await readdir(folder, { recursive: true, withFileTypes: true })
  } catch (thrown) {
    if (isMissing(thrown)) return []
    throw thrown
  }
}
