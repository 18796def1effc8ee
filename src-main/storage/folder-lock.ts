import { readFile, rm, utimes, stat, open } from 'node:fs/promises'
import { join } from 'node:path'
import { err, ok, type Result } from '@shared/units/result'
import { errnoCode, isMissing } from './storage-fault'

/*
 * One program at a time on one data folder per machine: two would write one journal. The lock names its process
 * and is touched now and then, so one left by a crash is known by a process that is gone or an old touch.
 */

const touchEveryMs = 10_000
const staleAfterMs = 35_000

export interface FolderLock {
  readonly release: () => Promise<void>
}

export async function lockFolder(
  dataFolder: string,
  machine: string,
  now: () => Date,
  isAlive: (processId: number) => boolean = processIsAlive,
): Promise<Result<FolderLock>> {
  const path = join(dataFolder, `.in-use-${machine}`)
  if (!(await claim(path))) {
    if (await isHeld(path, now, isAlive))
      return err({
        code: 'unavailable',
        message: 'Potwright is already open on this data folder. Use that one, or close it first.',
      })
    await rm(path, { force: true })
    if (!(await claim(path)))
      return err({ code: 'unavailable', message: 'Potwright was opened twice at once. Use the other one.' })
  }
  const touching = setInterval(() => {
    utimes(path, now(), now()).catch(() => undefined) // a folder that went away is noticed by the next save
  }, touchEveryMs).unref()
  return ok({
    release: async () => {
      clearInterval(touching)
      await rm(path, { force: true })
    },
  })
}

/** Creates the lock; false where there is one already. */
async function claim(path: string): Promise<boolean> {
  try {
    const file = await open(path, 'wx')
    await file.writeFile(String(process.pid))
    await file.close()
    return true
  } catch (thrown) {
    if (errnoCode(thrown) === 'EEXIST') return false
    throw thrown
  }
}

async function isHeld(
  path: string,
  now: () => Date,
  isAlive: (processId: number) => boolean,
): Promise<boolean> {
  try {
    const holder = Number(await readFile(path, 'utf8'))
    const { mtimeMs } = await stat(path)
    return Math.abs(now().getTime() - mtimeMs) < staleAfterMs && isAlive(holder)
  } catch (thrown) {
    if (isMissing(thrown)) return false
    throw thrown
  }
}

function processIsAlive(processId: number): boolean {
  if (!Number.isInteger(processId) || processId <= 0) return false
  try {
    process.kill(processId, 0)
    return true
  } catch (thrown) {
    return errnoCode(thrown) === 'EPERM' // it is there, and someone else's
  }
}
