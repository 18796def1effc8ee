import type { VerdictName, VerdictState } from '@shared/schema/check'

/** What a state is called where a line begins with it, on every screen and on the command line. */
export const stateWords: Record<VerdictState, string> = {
  holds: 'Holds',
  close: 'Close',
  fails: 'Fails',
  'cannot-tell': 'Cannot tell',
}

/** A state within a line, as "cannot tell". */
export const sayState = (state: VerdictState): string => stateWords[state].toLowerCase()

/** What each verdict is called, and what it answers. */
export const verdictWords: Record<VerdictName, { name: string; question: string }> = {
  legal: { name: 'Legal', question: 'Meets every rule found for this place and day' },
  holdsBottom: { name: 'Holds bottom', question: 'Stays where it is dropped when the tide runs' },
  floatShows: { name: 'Float shows', question: 'Floats above water at every stage of the tide' },
  lifts: { name: 'Lifts', question: 'Can be hauled without hurting a back or a rope' },
  fishes: { name: 'Fishes', question: 'Bait lasts, legal crabs get in, small ones get out' },
  stows: { name: 'Stows', question: 'Fits the space and the load there is' },
}
