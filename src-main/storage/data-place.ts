import { cp, mkdir } from 'node:fs/promises'
import { basename, join } from 'node:path'
import * as v from 'valibot'
import { err, ok, type Result } from '@shared/units/result'
import { documentText, parseDocument, readIfThere } from './document-file'
import { writeDurably } from './durable-write'
import { namesIn } from './folder-reader'
import { isInside } from './inside'

/* Where this machine keeps its data, where that was chosen. Kept outside the data folder, which it names. */

const PlaceSchema = v.strictObject({
  format: v.literal('potwright/data-folder'),
  version: v.literal(1),
  folder: v.pipe(v.string(), v.minLength(1), v.maxLength(1000)),
})

const kind = { schema: PlaceSchema, migrations: [], called: 'note of the data folder' }
const noteIn = (home: string) => join(home, 'data-folder.json')

/** The folder chosen on this machine; undefined where none was, or the note cannot be read. */
export async function chosenFolder(home: string): Promise<string | undefined> {
  const text = await readIfThere(noteIn(home))
  const note = text === undefined ? undefined : parseDocument(text, kind)
  return note?.ok ? note.value.folder : undefined
}

export type MoveOutcome = 'copied' | 'found'

/**
 * Chooses another folder for the data from the next start on. An empty one gets a copy of everything; one that holds
 * data of Potwright is taken as it is. Nothing is removed from the old folder.
 *
 * @param from the folder in use
 * @param to   the folder chosen
 */
export async function chooseFolder(
  home: string,
  from: string,
  to: string,
): Promise<Result<{ outcome: MoveOutcome }>> {
  if (isInside(from, to) || isInside(to, from))
    return err({
      code: 'invalid',
      message: 'One of the two folders lies inside the other. Nothing was changed; choose one elsewhere.',
    })
  await mkdir(to, { recursive: true })
  const there = (await namesIn(to)).filter((name) => !name.startsWith('.'))
  const outcome = there.length === 0 ? 'copied' : there.some((name) => ours.has(name)) ? 'found' : undefined
  if (!outcome)
    return err({
      code: 'invalid',
      message: 'That folder holds other things. Nothing was changed; choose an empty one.',
    })
  if (outcome === 'copied')
    await cp(from, to, { recursive: true, filter: (path) => !basename(path).startsWith('.in-use-') })
  await writeDurably(noteIn(home), documentText({ format: 'potwright/data-folder', version: 1, folder: to }))
  return ok({ outcome })
}

const ours = new Set(['pots', 'waters', 'journal', 'packs', 'settings', 'materials.json'])
