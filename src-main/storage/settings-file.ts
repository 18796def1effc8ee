import { join } from 'node:path'
import { Low } from 'lowdb'
import { type AppError, err, ok, type Result } from '@shared/units/result'
import { defaultSettings, type Settings, SettingsSchema } from '@shared/schema/settings'
import { DocumentFile, parseJson, readIfThere } from './document-file'
import type { Disk } from './durable-write'
import { setAside } from './set-aside'
import { StorageFault } from './storage-fault'

/*
 * This machine's own settings, `settings/<machine>.json`: one file a machine, because the data folder may be
 * shared by several. Damaged ones are set aside for the defaults; newer ones are neither read nor written.
 */

const kind = { schema: SettingsSchema, migrations: [], called: 'settings file' }

export class SettingsFile {
  readonly fileName: string
  readonly #low: Low<Settings>
  #refused: AppError | undefined

  private constructor(folder: string, machine: string, disk: Disk | undefined) {
    this.fileName = `${machine}.json`
    this.#low = new Low(new DocumentFile(join(folder, this.fileName), kind, disk), defaultSettings)
  }

  static async open(
    dataFolder: string,
    machine: string,
    now: () => Date,
    disk?: Disk,
  ): Promise<SettingsFile> {
    const folder = join(dataFolder, 'settings')
    const file = new SettingsFile(folder, machine, disk)
    const path = join(folder, file.fileName)
    const text = await readIfThere(path)
    if (text !== undefined && parseJson(text) === undefined) await setAside(path, now())
    await file.reload()
    return file
  }

  get current(): Settings {
    return this.#low.data
  }

  /** Reads the file again after it changed underneath. */
  async reload(): Promise<void> {
    this.#refused = undefined
    try {
      await this.#low.read()
    } catch (thrown) {
      if (!(thrown instanceof StorageFault)) throw thrown
      this.#refused = thrown.appError
    }
  }

  /** Keeps new settings on disk first and in memory after, so that a failed save changes neither. */
  async replace(next: Settings): Promise<Result<Settings>> {
    if (this.#refused) return err(this.#refused)
    await this.#low.adapter.write(next)
    this.#low.data = next
    return ok(next)
  }
}
