import * as v from 'valibot'
import { SettingsSchema } from '@shared/schema/settings'
import { call, nothing } from './call'

const changeable = v.partial(v.omit(SettingsSchema, ['format', 'version']))

export const settings = {
  'settings:get': call(nothing, SettingsSchema),
  /** Sets the fields given and leaves the others; `clear` takes fields back to their default. */
  'settings:set': call(
    v.strictObject({
      set: changeable,
      clear: v.optional(
        v.array(v.picklist(Object.keys(changeable.entries) as (keyof typeof changeable.entries)[])),
      ),
    }),
    SettingsSchema,
  ),
}
