import { join } from 'node:path'
import { FolderWatch } from '@main/storage/watch-folder'
import type { ChangedSubject, Notice } from '@shared/contract/bridge'

/** Watches the folders of the data folder and passes on what changes underneath. */
export class Watches {
  readonly #watches: FolderWatch[] = []
  readonly #listeners = new Set<(notice: Notice) => void>()

  constructor(readonly dataFolder: string) {}

  /**
   * Starts watching the folder of one subject; `before` runs ahead of telling anyone. What is returned is to be
   * told of every file written there by us.
   */
  async watch(
    subject: ChangedSubject,
    folder: string = subject,
    before: () => Promise<void> = () => Promise.resolve(),
  ): Promise<(fileName: string) => Promise<void>> {
    const watch = await FolderWatch.start(join(this.dataFolder, folder), () => {
      void before().then(() => this.tell({ kind: 'changed', subject }))
    })
    this.#watches.push(watch)
    return (fileName) => watch.wrote(fileName)
  }

  onNotice(listener: (notice: Notice) => void): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  close(): void {
    for (const watch of this.#watches) watch.stop()
    this.#listeners.clear()
  }

  /** Tells every listener. */
  tell(notice: Notice): void {
    for (const listener of this.#listeners) listener(notice)
  }
}
