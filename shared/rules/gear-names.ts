import type { GearKind } from '@shared/schema/rule-check'

/** Kinds of gear as the trade says them. */
export const gearNames: Record<GearKind, string> = {
  pot: 'a pot',
  'collapsible-trap': 'a collapsible trap',
  dilly: 'a dilly',
  'hoop-net': 'a hoop net',
  'drop-net': 'a drop net',
  'lift-net': 'a lift net',
  'ring-net': 'a ring net',
  'star-trap': 'a star trap',
  creel: 'a creel',
}
