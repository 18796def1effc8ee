import { err, ok, type Result } from '@shared/units/result'
import type { DocumentFolder } from './document-folder'
import type { FolderContents, Found, OddFile } from './folder-reader'
import { parseDocument } from './document-file'
import { type Choice, type KeptDocument, type Problem, revisionOf } from './stored-document'
import { compareClocks, mergeClocks } from './version-clock'
import type { OwnedNote } from './version-notes'

/** A problem with what is needed to settle it: the file that causes it, where one does. */
export interface OpenProblem<T> extends Problem<T> {
  readonly fileName?: string
}

/** Everything in a folder that a person has to decide on. */
export async function openProblems<T extends KeptDocument>(
  folder: DocumentFolder<T>,
  contents: FolderContents<T>,
): Promise<OpenProblem<T>[]> {
  const revisions = new Map(contents.documents.map(({ stored }) => [stored.document.id, stored.revision]))
  const files = contents.odd.filter(
    // A copy that says the same as the document is no problem of anyone's.
    (file) => !(file.document && revisions.get(file.document.id) === revisionOf(file.document)),
  )
  return [
    ...contents.documents.flatMap((found) => changedApart(folder, found)),
    ...(await Promise.all(files.map((file) => problemOfFile(folder, file)))),
  ]
}

/** Versions of one document that another machine saved without knowing the one in the folder. */
function changedApart<T extends KeptDocument>(
  folder: DocumentFolder<T>,
  { stored, notes }: Found<T>,
): OpenProblem<T>[] {
  const current = notes.filter((note) => note.revision === stored.revision)
  if (current.length === 0) return []
  const clock = mergeClocks(current.map((note) => note.clock))
  return notes
    .filter((note) => note.revision !== stored.revision && compareClocks(note.clock, clock) === 'apart')
    .flatMap((note) => {
      const other = documentOf(folder, note)
      if (!other) return []
      return {
        id: `apart:${note.machine}:${stored.document.id}`,
        kind: 'changed-apart' as const,
        documentId: stored.document.id,
        other,
        message: `“${stored.document.name}” was changed on ${note.savedBy} and on ${stored.savedBy ?? 'another machine'} without either knowing. Both versions are kept.`,
      }
    })
}

async function problemOfFile<T extends KeptDocument>(
  folder: DocumentFolder<T>,
  file: OddFile<T>,
): Promise<OpenProblem<T>> {
  const { fileName, documentId } = file
  const common = { id: `file:${fileName}`, fileName, ...(documentId === undefined ? {} : { documentId }) }
  if (file.role === 'copy')
    return {
      ...common,
      kind: 'copy',
      message: `There is a second copy of “${file.document?.name ?? documentId}” in the folder (${file.label}).`,
      ...(file.document === undefined ? {} : { other: file.document }),
    }
  if (file.role === 'newer' || file.role === 'unreadable')
    return {
      ...common,
      kind: file.role,
      message: `${fileName}: ${file.error?.message ?? 'It is damaged and the folder can only be read.'} It was left as it is.`,
    }
  const note = newest(documentId === undefined ? [] : await folder.reader.notes.about(documentId))
  const other = note && documentOf(folder, note)
  return {
    ...common,
    kind: 'set-aside',
    message: other
      ? `A damaged file was set aside as ${fileName}. The version saved on ${note.savedAt.slice(0, 10)} by ${note.savedBy} can be put back.`
      : `A damaged file was set aside as ${fileName}. A backup may hold the last good version.`,
    ...(other ? { other } : {}),
  }
}

/**
 * Settles one problem as the user chose. The version that loses its place goes to `removed/`.
 *
 * @param copyId id for the other version where both are kept and the id is taken
 */
export function settle<T extends KeptDocument>(
  folder: DocumentFolder<T>,
  problemId: string,
  choice: Choice,
  copyId: string,
): Promise<Result<Record<string, never>>> {
  return folder.queue.run(async () => {
    const contents = await folder.reader.contents()
    const problem = (await openProblems(folder, contents)).find(({ id }) => id === problemId)
    if (!problem) return err({ code: 'not_found' as const, message: 'This is settled already.' })
    const { other, fileName, documentId } = problem
    const current = contents.documents.find(({ stored }) => stored.document.id === documentId)?.stored
    if (choice !== 'keep-current' && !other)
      return err({ code: 'invalid' as const, message: 'There is no readable second version to take.' })
    if (choice === 'keep-both' && other)
      await folder.write(current ? { ...other, id: copyId, name: copyName(other.name) } : other, undefined)
    if (choice === 'take-other' && other) {
      if (current) await folder.putAway(`${other.id}${folder.options.suffix}`)
      await folder.write(other, current?.revision)
    } else if (current && problem.kind === 'changed-apart') {
      // Saved again as it is, so that it now comes after the other version on every machine.
      await folder.write(current.document, current.revision)
    }
    if (fileName !== undefined) await folder.putAway(fileName)
    return ok({})
  })
}

const copyName = (name: string) => `${name.slice(0, 108)} (other one)`

function documentOf<T extends KeptDocument>(folder: DocumentFolder<T>, note: OwnedNote): T | undefined {
  const read = parseDocument(JSON.stringify(note.document), folder.options.kind)
  return read.ok ? read.value : undefined
}

const newest = (notes: readonly OwnedNote[]) => [...notes].sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1))[0]
