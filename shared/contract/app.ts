import * as v from 'valibot'
import { call, nothing } from './call'

const label = v.pipe(v.string(), v.minLength(1), v.maxLength(120))

/** Commands of the page by heading, for the menu of a window that has one. */
const menu = v.strictObject({
  groups: v.pipe(
    v.array(
      v.strictObject({
        label,
        entries: v.pipe(
          v.array(
            v.strictObject({
              command: v.pipe(v.string(), v.maxLength(80)),
              label,
              keys: v.optional(v.string()),
            }),
          ),
          v.maxLength(100),
        ),
      }),
    ),
    v.maxLength(20),
  ),
})

export type MenuGroups = v.InferOutput<typeof menu>['groups']

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
  /**
   * Lets the user choose another data folder for the next start. An empty one gets a copy of everything, one with
   * data is taken as it is; `kept` where they thought better of it.
   */
  'app:choose-folder': call(nothing, v.strictObject({ outcome: v.picklist(['copied', 'found', 'kept']) })),
  /** What the page can do now. The desktop window shows it as its menu; a choice comes back as a notice. */
  'app:menu': call(menu, nothing),
  /** The interface is done saving what it held; the window may close, where all of it could be `saved`. */
  'app:flushed': call(v.strictObject({ saved: v.boolean() }), nothing),
}
