import * as v from 'valibot'
import { photoFile, regionCode, wholeBetween } from './fields'
import { JournalEventSchema } from './journal'
import { OwnMaterialsSchema } from './materials'
import { PotSchema } from './pot'
import { SettingsSchema } from './settings'
import { WaterSchema } from './water'

/*
 * Everything there is, to go back to, or to move to another machine. Photos are named with what is in them and lie
 * beside it: once for all backups where they are kept, and as `photos/<file>` in the file that moves house.
 */

const BackupPhotoSchema = v.strictObject({
  file: photoFile,
  bytes: wholeBetween(0, Number.MAX_SAFE_INTEGER),
  /** SHA-256 of the file, in hexadecimal. */
  sha256: v.pipe(v.string(), v.regex(/^[0-9a-f]{64}$/, 'must be a SHA-256')),
})

export type BackupPhoto = v.InferOutput<typeof BackupPhotoSchema>

export const BackupSchema = v.strictObject({
  format: v.literal('potwright/backup'),
  version: v.literal(2),
  writtenAt: v.pipe(v.string(), v.isoTimestamp('must be a time like 2026-12-05T10:00:00.000Z')),
  /** Name of the machine it was made on. */
  machine: v.string(),
  pots: v.array(PotSchema),
  waters: v.array(WaterSchema),
  // The region names the file that the rules go back to.
  packs: v.array(v.looseObject({ region: regionCode })),
  materials: OwnMaterialsSchema,
  settings: SettingsSchema,
  journal: v.array(JournalEventSchema),
  photos: v.array(BackupPhotoSchema),
})

export type Backup = v.InferOutput<typeof BackupSchema>
