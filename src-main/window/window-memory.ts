import { join } from 'node:path'
import { documentText, parseDocument, readIfThere } from '@main/storage/document-file'
import { writeDurably } from '@main/storage/durable-write'
import * as v from 'valibot'
import { firstBounds, type WindowBounds, WindowBoundsSchema } from './window-bounds'

const kind = {
  schema: v.strictObject({
    format: v.literal('potwright/window'),
    version: v.literal(1),
    bounds: WindowBoundsSchema,
  }),
  migrations: [],
  called: 'window file',
}

/** Where the window was last time. Not worth a word if it cannot be read: the first place will do. */
export async function rememberedBounds(home: string): Promise<WindowBounds> {
  const text = await readIfThere(join(home, 'window.json'))
  const read = text === undefined ? undefined : parseDocument(text, kind)
  return read?.ok ? read.value.bounds : firstBounds
}

export const rememberBounds = (home: string, bounds: WindowBounds) =>
  writeDurably(join(home, 'window.json'), documentText({ format: 'potwright/window', version: 1, bounds }))
