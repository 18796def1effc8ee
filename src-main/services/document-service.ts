import type { Choice, KeptDocument, Problem, Stored } from '@main/storage/stored-document'
import type { DocumentFolder } from '@main/storage/document-folder'
import { documentText, parseDocument } from '@main/storage/document-file'
import { openProblems, settle } from '@main/storage/problems'
import { asResult } from '@main/storage/storage-fault'
import { revisionOf } from '@main/storage/stored-document'
import { err, ok, type Result } from '@shared/units/result'

export interface DocumentServiceOptions<T extends KeptDocument> {
  readonly folder: DocumentFolder<T>
  readonly newId: () => string
}

type IfExists = 'refuse' | 'keep-both' | 'replace'

/** What can be asked about one kind of document; pots and waters give these their channel names. */
export function documentService<T extends KeptDocument>({ folder, newId }: DocumentServiceOptions<T>) {
  return {
    list: (): Promise<Result<{ items: Stored<T>[]; problems: Problem<T>[] }>> =>
      asResult(async () => {
        const contents = await folder.reader.contents()
        const problems = await openProblems(folder, contents)
        return ok({
          items: contents.documents.map(({ stored }) => stored),
          problems: problems.map(forInterface),
        })
      }),

    get: ({ id }: { id: string }) => asResult(() => folder.get(id)),

    save: ({ document, revision }: { document: T; revision?: string | undefined }) =>
      asResult(() => folder.save(document, revision)),

    delete: ({ id, revision }: { id: string; revision?: string | undefined }) =>
      asResult(() => folder.remove(id, revision)),

    restore: ({ id }: { id: string }) => asResult(() => folder.restore(id)),

    import: ({ text, ifExists = 'refuse' }: { text: string; ifExists?: IfExists | undefined }) =>
      asResult(async () => {
        const read = parseDocument(text, folder.options.kind)
        return read.ok ? takeIn(read.value, ifExists) : read
      }),

    export: ({ id }: { id: string }) =>
      asResult(async () => {
        const kept = await folder.get(id)
        if (!kept.ok) return kept
        const { document } = kept.value
        return ok({
          fileName: `${fileNameOf(document.name)}${folder.options.suffix}`,
          text: documentText(document),
        })
      }),

    settle: ({ problem, choice }: { problem: string; choice: Choice }) =>
      asResult(() => settle(folder, problem, choice, newId())),
  }

  async function takeIn(
    document: T,
    ifExists: IfExists,
  ): Promise<Result<{ outcome: 'added' | 'same' | 'replaced'; stored: Stored<T> }>> {
    const kept = await folder.get(document.id)
    if (!kept.ok && kept.error.code !== 'not_found') return kept
    if (kept.ok && kept.value.revision === revisionOf(document))
      return ok({ outcome: 'same', stored: kept.value })
    if (kept.ok && ifExists === 'refuse')
      return err({
        code: 'conflict',
        message: `“${kept.value.document.name}” is here already and differs. Keep both, or replace the one here.`,
      })
    const incoming = kept.ok && ifExists === 'keep-both' ? { ...document, id: newId() } : document
    const saved = await folder.save(
      incoming,
      kept.ok && ifExists === 'replace' ? kept.value.revision : undefined,
    )
    if (!saved.ok) return saved
    return ok({ outcome: kept.ok && ifExists === 'replace' ? 'replaced' : 'added', stored: saved.value })
  }
}

/** A document's name as a file name that every system takes. */
function fileNameOf(name: string): string {
  const plain = name
    .normalize('NFKD')
    .replace(/[^\p{L}\p{N} _-]/gu, '')
    .trim()
    .replace(/\s+/g, '-')
    .slice(0, 60)
  return plain || 'unnamed'
}

function forInterface<T>({ id, kind, documentId, message, other }: Problem<T>): Problem<T> {
  return {
    id,
    kind,
    message,
    ...(documentId === undefined ? {} : { documentId }),
    ...(other === undefined ? {} : { other }),
  }
}
