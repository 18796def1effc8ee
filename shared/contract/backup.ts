import * as v from 'valibot'
import { id } from '@shared/schema/fields'
import { base64Text, call, nothing } from './call'

const backupId = v.pipe(v.string(), v.regex(/^[0-9]{8}-[0-9]{6}(-[a-z-]{1,24})?$/, 'must name a backup'))

const subject = v.picklist(['pots', 'waters', 'packs', 'materials', 'photos', 'journal', 'settings'])

/** Everything as the backup has it, or only what is not here: then what was changed on both sides stays as it is here. */
export const restoreTakes = ['everything', 'missing'] as const

/** What a restore or an import would do, by subject and name. */
const change = v.strictObject({
  subject,
  id: v.string(),
  /** Left out of photos and of log entries, which are told by their number alone. */
  name: v.optional(v.string()),
  effect: v.picklist(['add', 'change', 'same']),
  /** How many things it stands for. */
  count: v.number(),
})

/** Photos that cannot be read, in words that tell them apart. The rest is done all the same. */
const lost = v.array(v.string())

const preview = v.strictObject({
  writtenAt: v.string(),
  changes: v.array(change),
  /** Things here that the backup does not hold; a restore leaves them as they are. */
  untouched: v.number(),
  lost,
})

/** A file on its way in or out in parts. */
const transfer = id

/** A few megabytes of a file, as base64, so that no message grows with what is kept. */
export const partBytes = 4 * 1024 * 1024
const base64 = base64Text(8_000_000, 'must be a part of a file')

export const backup = {
  'backup:list': call(
    nothing,
    v.array(
      v.strictObject({ id: backupId, writtenAt: v.string(), sizeBytes: v.number(), reason: v.string() }),
    ),
  ),
  'backup:create': call(nothing, v.strictObject({ id: backupId, lost })),
  'backup:preview': call(v.strictObject({ id: backupId }), preview),
  /** Puts back everything the backup holds; a backup of the state before is made first. */
  'backup:restore': call(
    v.strictObject({ id: backupId, take: v.optional(v.picklist(restoreTakes)) }),
    v.strictObject({ before: backupId, changes: v.array(change), lost }),
  ),
  /** Everything in one file, photos and all, to move to another machine. It is read part by part. */
  'backup:export': call(
    nothing,
    v.strictObject({
      transfer,
      fileName: v.string(),
      /** About how large the file will be. */
      bytes: v.number(),
      lost,
    }),
  ),
  /** The next part of the file, and whether it was the last. */
  'backup:export-part': call(
    v.strictObject({ transfer }),
    v.strictObject({ base64: v.string(), last: v.boolean() }),
  ),
  /** Hands over a file part by part; the first names no transfer yet. */
  'backup:import-part': call(
    v.strictObject({ transfer: v.optional(transfer), base64 }),
    v.strictObject({ transfer }),
  ),
  /** Takes what was handed over in as a backup, to be previewed and restored like any other. */
  'backup:import': call(v.strictObject({ transfer }), v.strictObject({ id: backupId })),
}
