import * as v from 'valibot'
import { id } from '@shared/schema/fields'
import { call, nothing } from './call'

/*
 * What can be asked about one kind of document that is kept a file each (pots, waters). A `revision` is a
 * fingerprint of the content: whoever saves says which one they started from, and a save from an older one is
 * refused as a conflict, so nobody overwrites what they have not seen.
 */

const revision = v.pipe(v.string(), v.regex(/^[0-9a-f]{16}$/, 'must be a revision'))

/** How two versions of one document came to be, or why a file is not among the documents. */
export const problemKinds = ['changed-apart', 'copy', 'unreadable', 'set-aside', 'newer'] as const

export const choices = ['keep-both', 'keep-current', 'take-other'] as const

const text = v.pipe(v.string(), v.maxLength(4_000_000))

export function documentCalls<S extends v.GenericSchema>(document: S) {
  const stored = v.strictObject({
    document,
    revision,
    savedAt: v.string(),
    /** Name of the machine that saved it, where that is known. */
    savedBy: v.optional(v.string()),
  })
  const problem = v.strictObject({
    /** Names the problem when settling it. */
    id: v.string(),
    kind: v.picklist(problemKinds),
    documentId: v.optional(v.string()),
    message: v.string(),
    /** The other version that can be had: the copy, the other machine's, or the newest good one kept. */
    other: v.optional(document),
  })
  return {
    list: call(nothing, v.strictObject({ items: v.array(stored), problems: v.array(problem) })),
    get: call(v.strictObject({ id }), stored),
    /** Without `revision` the document is new; with it, it replaces exactly that revision. */
    save: call(v.strictObject({ document, revision: v.optional(revision) }), stored),
    delete: call(v.strictObject({ id, revision: v.optional(revision) }), nothing),
    /** Takes back a delete. */
    restore: call(v.strictObject({ id }), stored),
    import: call(
      v.strictObject({ text, ifExists: v.optional(v.picklist(['refuse', 'keep-both', 'replace'])) }),
      v.strictObject({ outcome: v.picklist(['added', 'same', 'replaced']), stored }),
    ),
    export: call(v.strictObject({ id }), v.strictObject({ fileName: v.string(), text: v.string() })),
    /** Settles two versions of one document. Nothing is thrown away: what loses goes to `removed/`. */
    settle: call(v.strictObject({ problem: v.string(), choice: v.picklist(choices) }), nothing),
  }
}
