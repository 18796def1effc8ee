import { join } from 'node:path'
import { type Water, WaterSchema } from '@shared/schema/water'
import { parseDocument, readIfThere } from './document-file'
import { namesIn } from './folder-reader'

/** The waters of a data folder as they stand, for reading only; what cannot be read is passed over. */
export async function readWaters(dataFolder: string): Promise<Water[]> {
  const folder = join(dataFolder, 'waters')
  const names = (await namesIn(folder)).filter(
    (name) => name.endsWith('.water.json') && !name.startsWith('.'),
  )
  const read = await Promise.all(names.map((name) => readIfThere(join(folder, name))))
  return read.flatMap((text) => {
    const water =
      text === undefined
        ? undefined
        : parseDocument(text, { schema: WaterSchema, migrations: [], called: 'water' })
    return water?.ok ? [water.value] : []
  })
}
