import * as v from 'valibot'
import { regionCode } from '@shared/schema/fields'
import type { RulePack } from '@shared/schema/rule-pack'
import { call, nothing } from './call'

/*
 * Rule packs. `pack` is what to judge by: the shipped one with the user's own rules laid over it, or the one of
 * the two that there is. It was read and checked before it is handed over; what the user keeps travels as it is.
 */

const kept = v.record(v.string(), v.unknown())
const rules = v.custom<RulePack>((given) => typeof given === 'object' && given !== null)

const packInUse = v.strictObject({
  region: v.string(),
  owner: v.picklist(['built-in', 'user']),
  pack: rules,
  /** What the user added or changed, as they keep it. */
  own: v.optional(kept),
  /** The shipped one, where there is something of the user's beside it. */
  builtIn: v.optional(rules),
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
  'packs:save': call(v.strictObject({ pack: kept }), v.strictObject({ region: v.string() })),
  /** Removes the user's rules of a region; the built-in ones come back into use. */
  'packs:delete': call(v.strictObject({ region: regionCode }), nothing),
}
