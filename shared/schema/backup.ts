import * as v from 'valibot'
import { regionCode } from './fields'
import { JournalEventSchema } from './journal'
import { OwnMaterialsSchema } from './materials'
import { PotSchema } from './pot'
import { SettingsSchema } from './settings'
import { WaterSchema } from './water'

/* Everything in one file, `*.backup.json`: to go back to, or to move to another machine. Photos stay files. */

export const BackupSchema = v.strictObject({
  format: v.literal('potwright/backup'),
  version: v.literal(1),
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
})

export type Backup = v.InferOutput<typeof BackupSchema>
