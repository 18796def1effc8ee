import { join } from 'node:path'
import { type Pot, PotSchema } from '@shared/schema/pot'
import { type Water, WaterSchema } from '@shared/schema/water'
import { type DocumentKind, parseDocument, readIfThere } from './document-file'
import { namesIn } from './folder-reader'

/* The documents of a data folder as they stand, for reading only; what cannot be read is passed over. */

export const readWaters = (dataFolder: string): Promise<Water[]> =>
  readAll(join(dataFolder, 'waters'), '.water.json', { schema: WaterSchema, migrations: [], called: 'water' })

export const readPots = (dataFolder: string): Promise<Pot[]> =>
  readAll(join(dataFolder, 'pots'), '.pot.json', { schema: PotSchema, migrations: [], called: 'pot design' })

async function readAll<T>(folder: string, suffix: string, kind: DocumentKind<T>): Promise<T[]> {
  const names = (await namesIn(folder)).filter((name) => name.endsWith(suffix) && !name.startsWith('.'))
  const texts = await Promise.all(names.map((name) => readIfThere(join(folder, name))))
  return texts.flatMap((text) => {
    const read = text === undefined ? undefined : parseDocument(text, kind)
    return read?.ok ? [read.value] : []
  })
}
