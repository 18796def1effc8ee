import { type FSWatcher, watch } from 'node:fs'
import { mkdir, stat } from 'node:fs/promises'
import { join } from 'node:path'
import { namesIn } from './folder-reader'

// Long enough for a sync engine to finish a handful of files, short enough to feel immediate.
const settleMs = 200
// Folders on a network tell of no change by themselves.
const pollMs = 5000

/** Watches one folder and tells when a file in it changed by another hand than ours. */
export class FolderWatch {
  readonly #seen = new Map<string, string>()
  #watcher: FSWatcher | undefined
  #settling: NodeJS.Timeout | undefined
  #polling: NodeJS.Timeout | undefined

  private constructor(
    readonly folder: string,
    readonly onChange: () => void,
  ) {}

  static async start(folder: string, onChange: () => void): Promise<FolderWatch> {
    const watching = new FolderWatch(folder, onChange)
    // A read-only data folder may lack the folder; polling then waits for it.
    await mkdir(folder, { recursive: true }).catch(() => undefined)
    await watching.#changed()
    watching.#listen()
    return watching
  }

  /** Takes note of a file that this process wrote or moved itself. */
  async wrote(fileName: string): Promise<void> {
    const signature = await signatureOf(join(this.folder, fileName))
    if (signature === undefined) this.#seen.delete(fileName)
    else this.#seen.set(fileName, signature)
  }

  stop(): void {
    this.#watcher?.close()
    clearTimeout(this.#settling)
    clearInterval(this.#polling)
  }

  #listen(): void {
    try {
      this.#watcher = watch(this.folder, { persistent: false }, () => this.#settle())
      this.#watcher.on('error', () => this.#poll())
    } catch {
      this.#poll() // not every file system can watch
    }
  }

  #poll(): void {
    this.#watcher?.close()
    this.#polling ??= setInterval(() => void this.#report(), pollMs).unref()
  }

  #settle(): void {
    clearTimeout(this.#settling)
    this.#settling = setTimeout(() => void this.#report(), settleMs).unref()
  }

  async #report(): Promise<void> {
    // A folder out of reach for a while, as one on a network, is looked at again the next time.
    if (await this.#changed().catch(() => false)) this.onChange()
  }

  /** Looks at every file once more; true where one appeared, went or differs. */
  async #changed(): Promise<boolean> {
    const now = new Map<string, string>()
    for (const name of await namesIn(this.folder)) {
      if (name.startsWith('.')) continue // temporary files and locks
      const signature = await signatureOf(join(this.folder, name))
      if (signature !== undefined) now.set(name, signature)
    }
    const changed = now.size !== this.#seen.size || [...now].some(([name, at]) => this.#seen.get(name) !== at)
    this.#seen.clear()
    for (const [name, at] of now) this.#seen.set(name, at)
    return changed
  }
}

async function signatureOf(path: string): Promise<string | undefined> {
  const found = await stat(path).catch(() => undefined) // gone between listing and looking
  return found?.isFile() ? `${found.size}:${found.mtimeMs}` : undefined
}
