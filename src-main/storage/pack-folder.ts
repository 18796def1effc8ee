import { rm } from 'node:fs/promises'
import { join } from 'node:path'
import * as v from 'valibot'
import { regionCode } from '@shared/schema/fields'
import { documentText, parseJson, readIfThere } from './document-file'
import { type Disk, realDisk, writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
import { isMissing } from './storage-fault'

export type PackJson = Record<string, unknown>

export interface PackProblem {
  readonly file: string
  readonly message: string
}

const suffix = '.rules.json'

/** The user's own rule packs, `packs/<region>.rules.json`, one a region, as plain JSON. */
export class PackFolder {
  readonly #folder: string

  constructor(
    dataFolder: string,
    readonly onWritten: (fileName: string) => Promise<void>,
    readonly disk: Disk = realDisk,
  ) {
    this.#folder = join(dataFolder, 'packs')
  }

  async all(): Promise<{ packs: Map<string, PackJson>; problems: PackProblem[] }> {
    const packs = new Map<string, PackJson>()
    const problems: PackProblem[] = []
    const files = (await namesIn(this.#folder)).filter(
      (name) => name.endsWith(suffix) && !name.startsWith('.'),
    )
    for (const file of files.sort()) {
      const region = file.slice(0, -suffix.length)
      const pack = parseJson((await readIfThere(join(this.#folder, file))) ?? '')
      if (!pack) problems.push({ file, message: damaged(file) })
      else if (!v.is(regionCode, region)) problems.push({ file, message: noRegion(file) })
      else if (pack['region'] !== region) problems.push({ file, message: otherRegion(file, pack) })
      else packs.set(region, pack)
    }
    return { packs, problems }
  }

  async save(region: string, pack: PackJson): Promise<void> {
    await writeDurably(join(this.#folder, `${region}${suffix}`), documentText(pack), this.disk)
    await this.onWritten(`${region}${suffix}`)
  }

  /** Removes one region's pack; false where there was none. */
  async remove(region: string): Promise<boolean> {
    try {
      await rm(join(this.#folder, `${region}${suffix}`))
    } catch (thrown) {
      if (isMissing(thrown)) return false
      throw thrown
    }
    await this.onWritten(`${region}${suffix}`)
    return true
  }
}

const otherRegion = (file: string, pack: PackJson) =>
  `${file} holds rules for ${typeof pack['region'] === 'string' ? pack['region'] : 'no region'}. It was left alone and is not in use.`

const noRegion = (file: string) =>
  `${file} is not named after a region, as US-WA${suffix} is. It was left alone and is not in use.`

const damaged = (file: string) => `${file} is damaged. It was left as it is and is not in use.`
