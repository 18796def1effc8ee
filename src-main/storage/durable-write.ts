import * as nodeDisk from 'node:fs/promises'
import { randomBytes } from 'node:crypto'
import { dirname, basename, join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { errnoCode } from './storage-fault'

/** The part of `node:fs/promises` that writing needs, so that tests can put a failing disk in its place. */
export type Disk = Pick<typeof nodeDisk, 'open' | 'rename' | 'unlink' | 'mkdir'>

export const realDisk: Disk = nodeDisk

// Virus scanners, indexers and sync engines hold a file for a moment after it appears.
const heldBriefly = new Set(['EPERM', 'EACCES', 'EBUSY'])
const renameWaitsMs = [20, 50, 100, 200, 400, 800]

/** Begins the name of every temporary file, so that leftovers of a killed process are known by sight. */
export const temporaryPrefix = '.tmp-'

/**
 * Writes a whole file so that a crash or a power cut leaves the old content or the new, never a mixture:
 * temporary file in the same folder, synced, renamed over the target, folder synced. Content that comes in parts and
 * ends in an error never takes the target's place.
 */
export async function writeDurably(
  path: string,
  content: string | Uint8Array | AsyncIterable<Uint8Array>,
  disk: Disk = realDisk,
): Promise<void> {
  const folder = dirname(path)
  await disk.mkdir(folder, { recursive: true })
  const temporary = join(folder, `${temporaryPrefix}${randomBytes(6).toString('hex')}-${basename(path)}`)
  try {
    const file = await disk.open(temporary, 'wx')
    try {
      for await (const part of inParts(content)) await file.writeFile(part) // each goes on where the last ended
      await file.sync()
    } finally {
      await file.close()
    }
    await renamePatiently(temporary, path, disk)
  } catch (thrown) {
    await disk.unlink(temporary).catch(() => undefined) // it may never have been made, or be renamed already
    throw thrown
  }
  await syncFolder(folder, disk)
}

const inParts = (content: string | Uint8Array | AsyncIterable<Uint8Array>) =>
  typeof content === 'string' || content instanceof Uint8Array ? [content] : content

async function renamePatiently(from: string, to: string, disk: Disk): Promise<void> {
  for (const waitMs of renameWaitsMs) {
    try {
      return await disk.rename(from, to)
    } catch (thrown) {
      if (!heldBriefly.has(errnoCode(thrown) ?? '')) throw thrown
      await pause(waitMs)
    }
  }
  await disk.rename(from, to)
}

/** Makes a new name in a folder survive a power cut. Windows cannot open a folder, and does not need it. */
export async function syncFolder(folder: string, disk: Disk): Promise<void> {
  if (process.platform === 'win32') return
  const handle = await disk.open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
