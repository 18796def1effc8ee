import type { VerdictState } from '@shared/schema/check'

/** Holds with the cautious figure, close where only the middle one holds, else fails. Margins are met at ≥ 0. */
export function stateOf(cautiousMargin: number, middleMargin: number): VerdictState {
  if (cautiousMargin >= 0 && middleMargin >= 0) return 'holds'
  return middleMargin >= 0 ? 'close' : 'fails'
}
