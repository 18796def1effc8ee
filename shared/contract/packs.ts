import * as v from 'valibot'
import { regionCode } from '@shared/schema/fields'
import { call, nothing } from './call'

/*
 * Rule packs. `pack` is what to judge by: the shipped one with the user's own rules laid over it, or the one of
 * the two that there is. Packs travel as plain JSON and are read where they are used.
 */

const pack = v.record(v.string(), v.unknown())

const packInUse = v.strictObject({
  region: v.string(),
  owner: v.picklist(['built-in', 'user']),
  pack,
  /** What the user added or changed, as they keep it. */
  own: v.optional(pack),
  builtIn: v.optional(pack),
})

export const packs = {
  'packs:list': call(
    nothing,
    v.strictObject({
      packs: v.array(packInUse),
      /** Files of the user's that cannot be used; they stay as they are. */
      problems: v.array(v.strictObject({ file: v.string(), message: v.string() })),
    }),
  ),
  'packs:get': call(v.strictObject({ region: regionCode }), packInUse),
  /** Keeps rules of the user's own for one region. */
  'packs:save': call(v.strictObject({ pack }), v.strictObject({ region: v.string() })),
  /** Removes the user's rules of a region; the built-in ones come back into use. */
  'packs:delete': call(v.strictObject({ region: regionCode }), nothing),
}
