import * as v from 'valibot'
import { call, nothing } from './call'

export const app = {
  'app:info': call(
    nothing,
    v.strictObject({
      version: v.string(),
      edition: v.picklist(['desktop', 'browser']),
      /** What it runs on, for the about box: names and versions. */
      runtime: v.record(v.string(), v.string()),
      dataFolder: v.string(),
      machine: v.strictObject({ id: v.string(), name: v.string() }),
      /** Today where this machine is, as the clock says. */
      today: v.string(),
      /** Why nothing can be saved, where that is so. */
      readOnly: v.optional(v.string()),
    }),
  ),
  'app:licences': call(
    nothing,
    v.array(
      v.strictObject({
        name: v.string(),
        version: v.string(),
        licence: v.string(),
        text: v.optional(v.string()),
      }),
    ),
  ),
  /** The interface has saved what it held; the window may close. */
  'app:flushed': call(nothing, nothing),
}
