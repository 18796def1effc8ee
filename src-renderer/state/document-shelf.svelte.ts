import { type AppError, ok, type Result } from '@shared/units/result'

/** A document as it is kept: what it says, and the revision whoever saves must have started from. */
export interface Stored<D> {
  readonly document: D
  readonly revision: string
  readonly savedAt: string
  readonly savedBy?: string | undefined
}

export interface Problem<D> {
  readonly id: string
  readonly kind: 'changed-apart' | 'copy' | 'unreadable' | 'set-aside' | 'newer'
  readonly documentId?: string | undefined
  readonly message: string
  readonly other?: D | undefined
}

/** The calls of one kind of document, pots or waters. */
export interface ShelfCalls<D> {
  list(): Promise<Result<{ items: Stored<D>[]; problems: Problem<D>[] }>>
  save(document: D, revision: string | undefined): Promise<Result<Stored<D>>>
  delete(id: string): Promise<Result<object>>
  restore(id: string): Promise<Result<Stored<D>>>
  import(text: string, ifExists: 'refuse' | 'keep-both' | 'replace'): Promise<Result<{ stored: Stored<D> }>>
  export(id: string): Promise<Result<{ fileName: string; text: string }>>
  settle(problem: string, choice: 'keep-both' | 'keep-current' | 'take-other'): Promise<Result<object>>
}

/** The saved documents of one kind, in the order of their names. */
export class DocumentShelf<D extends { readonly id: string; readonly name: string }> {
  items = $state.raw<readonly Stored<D>[]>([])
  problems = $state.raw<readonly Problem<D>[]>([])
  loaded = $state(false)
  error = $state.raw<AppError>()
  sorted = $derived(
    [...this.items].sort((a, b) => a.document.name.localeCompare(b.document.name, 'en', { numeric: true })),
  )

  constructor(private readonly calls: ShelfCalls<D>) {}

  async load(): Promise<void> {
    const answer = await this.calls.list()
    this.error = answer.ok ? undefined : answer.error
    if (answer.ok) {
      this.items = answer.value.items
      this.problems = answer.value.problems
    }
    this.loaded = true
  }

  find(id: string | undefined): Stored<D> | undefined {
    return this.items.find((item) => item.document.id === id)
  }

  /**
   * Saves over one revision; another one on disk is refused as a conflict.
   *
   * @param base the revision that the change was made from; none for a new document
   */
  async save(document: D, base?: string): Promise<Result<Stored<D>>> {
    const answer = await this.calls.save(document, base)
    if (answer.ok) this.#put(answer.value)
    return answer
  }

  /** Puts a document there under its own id, unless it is there already. */
  async keep(document: D): Promise<Result<unknown>> {
    return this.find(document.id) ? ok(document) : this.save(document)
  }

  async remove(id: string): Promise<Result<object>> {
    const answer = await this.calls.delete(id)
    if (answer.ok) this.items = this.items.filter((item) => item.document.id !== id)
    return answer
  }

  async restore(id: string): Promise<Result<Stored<D>>> {
    const answer = await this.calls.restore(id)
    if (answer.ok) this.#put(answer.value)
    return answer
  }

  async import(text: string): Promise<Result<{ stored: Stored<D> }>> {
    const answer = await this.calls.import(text, 'keep-both')
    if (answer.ok) this.#put(answer.value.stored)
    return answer
  }

  export(id: string): Promise<Result<{ fileName: string; text: string }>> {
    return this.calls.export(id)
  }

  async settle(
    problem: string,
    choice: 'keep-both' | 'keep-current' | 'take-other',
  ): Promise<Result<object>> {
    const answer = await this.calls.settle(problem, choice)
    if (answer.ok) await this.load()
    return answer
  }

  #put(stored: Stored<D>): void {
    this.items = [...this.items.filter((item) => item.document.id !== stored.document.id), stored]
  }
}
