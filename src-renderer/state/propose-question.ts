import { propose, type ProposeOutcome, type ProposeProgress } from '@shared/match/propose/propose'
import type { Pot } from '@shared/schema/pot'
import type { VerdictName } from '@shared/schema/check'
import { placesOf, settingOf, type MatchTerms } from './match-question'

export interface ProposeQuestion extends MatchTerms {
  readonly shapes: readonly Pot[]
  /** Heaviest pot that may go over the side, bait included [kg]. */
  readonly mostKg: number | undefined
  readonly waived: readonly VerdictName[]
}

export type ProposeAnswer =
  | { readonly kind: 'progress'; readonly progress: ProposeProgress }
  | { readonly kind: 'fault'; readonly message: string }
  | { readonly kind: 'outcome'; readonly outcome: ProposeOutcome }

const TELL_MS = 80

/** Looks for the lightest and the cheapest design; tells progress now and then. */
export function* answerPropose(question: ProposeQuestion, now: () => number): Generator<ProposeAnswer> {
  const faults: string[] = []
  const places = placesOf(question, (_, message) => faults.push(message))
  const [fault] = faults
  if (fault !== undefined) {
    yield { kind: 'fault', message: fault }
    return
  }
  const { shapes, mostKg, waived } = question
  const search = propose({
    shapes,
    places,
    setting: settingOf(question),
    waived,
    ...(mostKg !== undefined && { mostKg }),
  })
  let told = -Infinity
  for (;;) {
    const step = search.next()
    if (step.done === true) {
      yield { kind: 'outcome', outcome: step.value }
      return
    }
    if (now() - told < TELL_MS) continue
    told = now()
    yield { kind: 'progress', progress: step.value }
  }
}
