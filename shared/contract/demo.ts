import * as v from 'valibot'
import { call, nothing } from './call'

/** The crews of the demo: one in feet and pounds with tide stations, one metric with ranges and rates. */
export const demoCrews = ['north', 'south'] as const
export type DemoCrew = (typeof demoCrews)[number]

const shown = v.strictObject({ crew: v.optional(v.picklist(demoCrews)) })

/*
 * The demo has a data folder of its own. While it is shown every other call is answered from there, and the reader's
 * own data lies untouched. The page reads everything again after a change.
 */
export const demo = {
  /** Which crew is shown; none where the data is the reader's own. */
  'demo:state': call(nothing, shown),
  'demo:show': call(v.strictObject({ crew: v.picklist(demoCrews) }), shown),
  /** Goes back to the reader's own data and removes everything of the demo. */
  'demo:remove': call(nothing, shown),
}
