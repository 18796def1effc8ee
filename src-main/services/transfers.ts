import { appendFile, mkdir, rm } from 'node:fs/promises'
import { join } from 'node:path'
import { temporaryPrefix } from '@main/storage/durable-write'
import { partBytes } from '@shared/contract/backup'
import { err, ok, type Result } from '@shared/units/result'

/*
 * A file on its way between the page and the services, a part a call, so that it is never held whole. There is one
 * each way at a time: who begins another ends the one before.
 */

export class Outgoing {
  #current: { transfer: string; parts: AsyncIterator<Uint8Array> } | undefined

  constructor(readonly newId: () => string) {}

  async begin(stream: AsyncIterable<Uint8Array>): Promise<string> {
    await this.#current?.parts.return?.()
    this.#current = { transfer: this.newId(), parts: stream[Symbol.asyncIterator]() }
    return this.#current.transfer
  }

  async next(transfer: string): Promise<Result<{ base64: string; last: boolean }>> {
    if (this.#current?.transfer !== transfer) return err(interrupted)
    const { parts } = this.#current
    const gathered: Uint8Array[] = []
    let last = false
    for (let size = 0; size < partBytes && !last;) {
      const next = await parts.next()
      if (next.done) last = true
      else {
        gathered.push(next.value)
        size += next.value.length
      }
    }
    if (last) this.#current = undefined
    return ok({ base64: Buffer.concat(gathered).toString('base64'), last })
  }
}

export class Incoming {
  #current: { transfer: string; path: string } | undefined

  constructor(
    readonly folder: string,
    readonly newId: () => string,
  ) {}

  async add(transfer: string | undefined, part: Uint8Array): Promise<Result<{ transfer: string }>> {
    if (transfer === undefined) await this.#begin()
    if (!this.#current || (transfer !== undefined && this.#current.transfer !== transfer))
      return err(interrupted)
    try {
      await appendFile(this.#current.path, part)
    } catch (thrown) {
      await this.#end()
      throw thrown
    }
    return ok({ transfer: this.#current.transfer })
  }

  /** Does something with the whole file, which is gone afterwards. */
  async take<T>(transfer: string, work: (path: string) => Promise<Result<T>>): Promise<Result<T>> {
    if (this.#current?.transfer !== transfer) return err(interrupted)
    try {
      return await work(this.#current.path)
    } finally {
      await this.#end()
    }
  }

  async #begin(): Promise<void> {
    await this.#end()
    await mkdir(this.folder, { recursive: true })
    const transfer = this.newId()
    // Named so that one left by a killed process is swept away.
    this.#current = { transfer, path: join(this.folder, `${temporaryPrefix}${transfer}`) }
  }

  async #end(): Promise<void> {
    if (this.#current) await rm(this.#current.path, { force: true })
    this.#current = undefined
  }
}

const interrupted = {
  code: 'not_found' as const,
  message: 'This was broken off, as another file was begun. Nothing was changed; begin again.',
}
