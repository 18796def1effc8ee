import type { GearKind } from '@shared/schema/rule-check'

/** Kinds of gear as the trade says them: one, and several. */
export const gearNames: Record<GearKind, { readonly one: string; readonly several: string }> = {
  pot: { one: 'a pot', several: 'pots' },
  'collapsible-trap': { one: 'a collapsible trap', several: 'collapsible traps' },
  dilly: { one: 'a dilly', several: 'dillies' },
  'hoop-net': { one: 'a hoop net', several: 'hoop nets' },
  'drop-net': { one: 'a drop net', several: 'drop nets' },
  'lift-net': { one: 'a lift net', several: 'lift nets' },
  'ring-net': { one: 'a ring net', several: 'ring nets' },
  'star-trap': { one: 'a star trap', several: 'star traps' },
  creel: { one: 'a creel', several: 'creels' },
}

/** "pots, dillies and ring nets" */
export function namesOf(kinds: readonly GearKind[]): string {
  const names = kinds.map((kind) => gearNames[kind].several)
  return names.length < 2 ? (names[0] ?? 'gear') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`
}
