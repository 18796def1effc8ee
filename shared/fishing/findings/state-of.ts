import type { VerdictState } from '@shared/schema/check'

/** Holds with the cautious figure, close where only the middle one holds, else fails. Margins are met at ≥ 0. */
export function stateOf(cautiousMargin: number, middleMargin: number): VerdictState {
  if (cautiousMargin >= 0 && middleMargin >= 0) return 'holds'
  return middleMargin >= 0 ? 'close' : 'fails'
}

/** Two significant figures, where the spread is too wide for more. */
export function rough(value: number): string {
  return String(Number(value.toPrecision(2)))
}

/** At most three significant figures, without trailing noise. */
export function shown(value: number): string {
  return String(Number(value.toPrecision(3)))
}
