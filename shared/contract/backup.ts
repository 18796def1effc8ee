import * as v from 'valibot'
import { call, nothing } from './call'

const backupId = v.pipe(v.string(), v.regex(/^[0-9]{8}-[0-9]{6}(-[a-z-]{1,24})?$/, 'must name a backup'))

const subject = v.picklist(['pots', 'waters', 'packs', 'materials', 'journal', 'settings'])

/** Everything as the backup has it, or only what is not here: then what was changed on both sides stays as it is here. */
export const restoreTakes = ['everything', 'missing'] as const

/** What a restore or an import would do, by subject and name. */
const change = v.strictObject({
  subject,
  id: v.string(),
  name: v.string(),
  effect: v.picklist(['add', 'change', 'same']),
})

const preview = v.strictObject({
  writtenAt: v.string(),
  changes: v.array(change),
  /** Things here that the backup does not hold; a restore leaves them as they are. */
  untouched: v.number(),
})

export const backup = {
  'backup:list': call(
    nothing,
    v.array(
      v.strictObject({ id: backupId, writtenAt: v.string(), sizeBytes: v.number(), reason: v.string() }),
    ),
  ),
  'backup:create': call(nothing, v.strictObject({ id: backupId })),
  'backup:preview': call(v.strictObject({ id: backupId }), preview),
  /** Puts back everything the backup holds; a backup of the state before is made first. */
  'backup:restore': call(
    v.strictObject({ id: backupId, take: v.optional(v.picklist(restoreTakes)) }),
    v.strictObject({ before: backupId, changes: v.array(change) }),
  ),
  /** Everything in one file, to move to another machine. */
  'backup:export': call(nothing, v.strictObject({ fileName: v.string(), text: v.string() })),
  /** Takes a file of another machine in as a backup, to be previewed and restored like any other. */
  'backup:import': call(
    v.strictObject({ text: v.pipe(v.string(), v.maxLength(200_000_000)) }),
    v.strictObject({ id: backupId }),
  ),
}
