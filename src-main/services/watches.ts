import { join } from 'node:path'
import { FolderWatch } from '@main/storage/watch-folder'
import type { ChangedSubject, Notice } from '@shared/contract/bridge'
import { askingPage } from './asking-page'

/** Told of a notice, and of the page that knows already, where there is one. */
export type Listener = (notice: Notice, known?: string) => void

/** Watches the folders of the data folder and passes on what changes underneath. */
export class Watches {
  readonly #watches: FolderWatch[] = []
  readonly #listeners = new Set<Listener>()

  constructor(readonly dataFolder: string) {}

  /**
   * Starts watching the folder of one subject; `before` runs ahead of telling anyone. What is returned is to be
   * told of every file written there by us; where a page asked for it, other pages hear of it.
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
    return async (fileName) => {
      await watch.wrote(fileName)
      const page = askingPage.getStore()
      if (page !== undefined) this.tell({ kind: 'changed', subject }, page)
    }
  }

  onNotice(listener: Listener): () => void {
    this.#listeners.add(listener)
    return () => this.#listeners.delete(listener)
  }

  close(): void {
    for (const watch of this.#watches) watch.stop()
    this.#listeners.clear()
  }

  /** Tells every listener. */
  tell(notice: Notice, known?: string): void {
    for (const listener of this.#listeners) listener(notice, known)
  }
}
