import * as v from 'valibot'
import { regionCode } from '@shared/schema/fields'
import { call, nothing } from './call'

/*
 * Rule packs, shipped and the user's own. A pack travels as plain JSON; `parsePack` reads it on the side that
 * uses it, so that a pack of the user's with one bad rule can still be shown with the message.
 */

const pack = v.record(v.string(), v.unknown())

const owner = v.picklist(['built-in', 'user'])

export const packs = {
  'packs:list': call(
    nothing,
    v.strictObject({
      packs: v.array(v.strictObject({ region: v.string(), owner, pack })),
      problems: v.array(v.strictObject({ file: v.string(), message: v.string() })),
    }),
  ),
  'packs:get': call(
    v.strictObject({ region: regionCode }),
    v.strictObject({ region: v.string(), owner, pack, builtIn: v.optional(pack) }),
  ),
  /** Keeps a pack of the user's own; it stands in for a built-in one of the same region. */
  'packs:save': call(v.strictObject({ pack }), v.strictObject({ region: v.string() })),
  /** Removes the user's pack of a region; a built-in one comes back into use. */
  'packs:delete': call(v.strictObject({ region: regionCode }), nothing),
}
