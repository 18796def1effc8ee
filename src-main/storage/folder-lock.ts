import { readFile, rm, utimes, stat, open } from 'node:fs/promises'
import { uptime } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { err, ok, type Result } from '@shared/units/result'
import { errnoCode, isMissing } from './storage-fault'

/*
 * One program at a time on one data folder per machine: two would write one journal. The lock names its process
 * and is touched now and then, so one left by a crash is known by a process that is gone, or whose number another has
 * now. A machine that slept wakes up to old touches of programs that are there: those are given the time to touch.
 */

const touchEveryMs = 10_000
const staleAfterMs = 35_000
const lookEveryMs = 500

/** What the lock asks of the machine, so that tests can put another in its place. */
export interface Machinery {
  readonly isAlive: (processId: number) => boolean
  /** When the machine was started. */
  readonly startedAt: () => number
  readonly pause: (ms: number) => Promise<unknown>
}

const thisMachinery: Machinery = {
  isAlive: processIsAlive,
  startedAt: () => Date.now() - uptime() * 1000,
  pause,
}

export interface FolderLock {
  readonly release: () => Promise<void>
}

export async function lockFolder(
  dataFolder: string,
  machine: string,
  now: () => Date,
  machinery: Machinery = thisMachinery,
): Promise<Result<FolderLock>> {
  const path = join(dataFolder, `.in-use-${machine}`)
  if (!(await claim(path))) {
    if (await isHeld(path, now, machinery))
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

async function isHeld(path: string, now: () => Date, machinery: Machinery): Promise<boolean> {
  try {
    const holder = Number(await readFile(path, 'utf8'))
    const { mtimeMs: touchedAt } = await stat(path)
    if (!machinery.isAlive(holder) || touchedAt < machinery.startedAt()) return false
    if (Math.abs(now().getTime() - touchedAt) < staleAfterMs) return true
    for (let waited = 0; waited <= touchEveryMs; waited += lookEveryMs) {
      await machinery.pause(lookEveryMs)
      if ((await stat(path)).mtimeMs !== touchedAt) return true
    }
    return false
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
