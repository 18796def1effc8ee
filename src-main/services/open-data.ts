import { mkdir } from 'node:fs/promises'
import { join } from 'node:path'
import { ulid } from 'ulid'
import { chosenFolder } from '@main/storage/data-place'
import { lockFolder } from '@main/storage/folder-lock'
import { defaultDataFolder } from '@main/storage/home'
import { thisMachine } from '@main/storage/machine'
import { sweepTemporary } from '@main/storage/sweep'
import { diskError } from '@main/storage/storage-fault'
import { err, ok, type Result } from '@shared/units/result'
import type { Host } from './app'
import { createServices, type Services } from './create-services'
import { withDemo } from './demo/demo-switch'

export interface OpenDataOptions {
  readonly home: string
  /** Where to keep the data; under `home` where none is named. */
  readonly dataFolder: string | undefined
  readonly now: () => Date
  readonly host: Host
}

export interface OpenData {
  readonly services: Services
  readonly dataFolder: string
  readonly close: () => Promise<void>
}

/** Packing years of history takes the machine a second or two; whoever has just opened the program comes first. */
const untilBackupMs = 60_000

/** Opens the data folder for the one program that uses it: takes the lock, starts the services. */
export async function openData(options: OpenDataOptions): Promise<Result<OpenData>> {
  const { home, now, host } = options
  const dataFolder = options.dataFolder ?? (await chosenFolder(home)) ?? defaultDataFolder(home)
  const newId = () => ulid(now().getTime())
  try {
    const machine = await thisMachine(home, newId, now)
    const lock = await takeLock(dataFolder, machine.id, now)
    if (!lock.ok) return lock
    await sweepTemporary(dataFolder, now())
    const open = (folder: string) => createServices({ dataFolder: folder, machine, now, newId, host })
    const services = await withDemo({ own: await open(dataFolder), folder: join(home, 'demo'), open, now })
    const backup = setTimeout(() => void services.dailyBackup(), untilBackupMs).unref()
    return ok({
      services,
      dataFolder,
      close: async () => {
        clearTimeout(backup)
        // Closed within the first minute, the day would have none.
        await services.dailyBackup()
        services.close()
        await lock.value.release()
      },
    })
  } catch (thrown) {
    return err(diskError(thrown))
  }
}

/** A folder that can only be read needs no lock: nothing will be written there. */
async function takeLock(dataFolder: string, machine: string, now: () => Date) {
  try {
    await mkdir(dataFolder, { recursive: true })
    return await lockFolder(dataFolder, machine, now)
  } catch (thrown) {
    if (diskError(thrown).code !== 'read_only') throw thrown
    return ok({ release: () => Promise.resolve() })
  }
}
