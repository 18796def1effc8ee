import type { PartName } from '@shared/schema/check'

/** What a check came to. `says` is the part of the sentence that the check adds: value, shortfall, what to do. */
export type Outcome =
  | {
      readonly state: 'holds' | 'fails'
      readonly says: string
      readonly part: PartName
      readonly actual?: number | string | boolean
      readonly limit?: number | string | boolean
      /** In `unit`; positive when met. */
      readonly margin?: number
      readonly unit?: string
    }
  | {
      readonly state: 'unknown'
      readonly missing: readonly string[]
      readonly part: PartName
      /** In place of "cannot tell without knowing …", where that would not say it. */
      readonly says?: string
    }
  /** Nothing there to hold against the rule. */
  | { readonly state: 'absent'; readonly part: PartName }

export type Decided = Extract<Outcome, { state: 'holds' | 'fails' }>

export const isDecided =
  (state: Decided['state']) =>
  (outcome: Outcome): outcome is Decided =>
    outcome.state === state

/** All must hold: a failure decides, then what is not known; the narrowest margin speaks for the rest. */
export function allOf(outcomes: readonly Outcome[], part: PartName): Outcome {
  const failed = outcomes.filter(isDecided('fails'))
  const failure = worst(failed)
  if (failure) return withSays(failure, failed)
  return unknownOf(outcomes, part) ?? worst(outcomes.filter(isDecided('holds'))) ?? { state: 'absent', part }
}

/** One must hold: the first that does decides, then what is not known; else the nearest miss speaks. */
export function anyOf(outcomes: readonly Outcome[], part: PartName): Outcome {
  const held = outcomes.find((outcome) => outcome.state === 'holds')
  if (held) return held
  const unknown = unknownOf(outcomes, part)
  if (unknown) return unknown
  const failed = outcomes.filter(isDecided('fails'))
  return nearest(failed) ?? { state: 'absent', part }
}

/** The opposite of a check; what is unknown or absent stays so. */
export function opposite(outcome: Outcome): Outcome {
  if (outcome.state === 'holds') return { state: 'fails', says: '', part: outcome.part }
  if (outcome.state === 'fails') return { state: 'holds', says: '', part: outcome.part }
  return outcome
}

function unknownOf(outcomes: readonly Outcome[], part: PartName): Outcome | undefined {
  const unknown = outcomes.filter((outcome) => outcome.state === 'unknown')
  const [first] = unknown
  if (!first) return undefined
  return {
    state: 'unknown',
    missing: [...new Set(unknown.flatMap((outcome) => outcome.missing))],
    part: first.part ?? part,
  }
}

/** Margin over limit, so that limits in different units can be ordered; without numbers, 0. */
export function relativeMargin(outcome: { margin?: number | undefined; limit?: unknown }): number {
  if (outcome.margin === undefined) return 0
  const limit = typeof outcome.limit === 'number' ? Math.abs(outcome.limit) : 0
  return outcome.margin / Math.max(limit, 1)
}

/** The one to speak of where all count: of those with figures the narrowest, else the first. */
function worst(decided: readonly Decided[]): Decided | undefined {
  return withFigures(decided).reduce<Decided | undefined>(
    (best, one) => (best === undefined || relativeMargin(one) < relativeMargin(best) ? one : best),
    undefined,
  )
}

/** The miss to speak of: of those with figures, as a kind that does not match has none, the narrowest. */
export function nearest(failed: readonly Decided[]): Decided | undefined {
  return withFigures(failed).reduce<Decided | undefined>(
    (best, one) => (best === undefined || relativeMargin(one) > relativeMargin(best) ? one : best),
    undefined,
  )
}

function withFigures(decided: readonly Decided[]): readonly Decided[] {
  const measured = decided.filter((outcome) => outcome.margin !== undefined)
  return measured.length > 0 ? measured : decided.slice(0, 1)
}

const withSays = (outcome: Decided, all: readonly Decided[]): Decided => ({
  ...outcome,
  says: [...new Set(all.map((one) => one.says))].filter((text) => text !== '').join(' '),
})
