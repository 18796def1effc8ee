import type { Entrance, EscapeGap, Pot } from '@shared/schema/pot'
import type { ItemKind } from '@shared/schema/rule-quantities'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import type { DecimalMark } from '@shared/units/locale'

export type RopeWeight = { readonly massKg: number; readonly belowFloatM: number }

/** What a region's rules are held against: the gear, the trip, the water, and inside an item check the item. */
export interface Facts {
  readonly pot: Pot
  readonly trip?: Trip
  readonly water?: Water
  /** Today, `2026-12-05`: stands in for the trip's date in rules that started in the past. */
  readonly today?: string
  readonly entrance?: Entrance
  readonly gap?: EscapeGap
  readonly weight?: RopeWeight
  /** Of the sentences; a full stop unless said. What a rule says stands as its source has it. */
  readonly decimalMark?: DecimalMark
}

export interface LegalCase {
  readonly pot: Pot
  readonly trip?: Trip | undefined
  readonly water?: Water | undefined
  /** Today, as a date or a time stamp: for rules that started in the past where the trip has no date. */
  readonly now?: string | undefined
  readonly decimalMark?: DecimalMark | undefined
}

/** The facts of a case; the day of today's time stamp. */
export function factsOf({ pot, trip, water, now, decimalMark }: LegalCase): Facts {
  return {
    pot,
    ...(trip ? { trip } : {}),
    ...(water ? { water } : {}),
    ...(now ? { today: now.slice(0, 10) } : {}),
    ...(decimalMark ? { decimalMark } : {}),
  }
}

/** What was read: a value, that the part is not there at all, or what would have to be known. */
export type Reading =
  | { readonly value: number | string | boolean | readonly string[] }
  | { readonly absent: true }
  | { readonly missing: string }

export const known = (value: number | string | boolean | readonly string[]): Reading => ({ value })
export const absent: Reading = { absent: true }
export const missing = (what: string): Reading => ({ missing: what })

/** A value that may have been left out, or what is then missing. */
export function stated(
  value: number | string | boolean | readonly string[] | undefined,
  what: string,
): Reading {
  return value === undefined ? missing(what) : known(value)
}

export type Reader = (facts: Facts) => Reading

/** The items of one kind, each with how many of it there are; or what is missing. */
export function itemsOf(
  facts: Facts,
  kind: ItemKind,
):
  | { readonly items: readonly { readonly facts: Facts; readonly count: number }[] }
  | { readonly missing: string } {
  const { pot } = facts
  if (kind === 'entrance')
    return pot.entrances
      ? { items: pot.entrances.map((entrance) => ({ facts: { ...facts, entrance }, count: 1 })) }
      : { missing: 'the entrances' }
  if (kind === 'gap')
    return pot.escapeGaps
      ? { items: pot.escapeGaps.map((gap) => ({ facts: { ...facts, gap }, count: gap.count })) }
      : { missing: 'the escape gaps' }
  if (!pot.rope) return { missing: 'the rope' }
  return pot.rope.weights
    ? { items: pot.rope.weights.map((weight) => ({ facts: { ...facts, weight }, count: 1 })) }
    : { missing: 'the weights on the rope' }
}
