import { significant } from '@shared/units/display'
import type { DecimalMark } from '@shared/units/locale'
import type { Remaining } from './strength-belief'

/** A chance to one significant figure, as said: "about 2 in 10", "under 1 in 20". */
export function chanceSaid(chance: number): string {
  if (chance < 0.05) return 'under 1 in 20'
  if (chance > 0.95) return 'nearly sure'
  return `about ${Math.max(1, Math.round(chance * 10))} in 10`
}

/** A life as said: "about 9 months, could be none, could be 19". */
export function monthsSaid({ low, mid, high }: Remaining, decimalMark: DecimalMark = '.'): string {
  const whole = (months: number) => (months < 0.5 ? 'none' : significant(months, decimalMark, 2))
  return mid < 0.5
    ? `likely none, could be ${whole(high)} months`
    : `about ${whole(mid)} months, could be ${whole(low)}, could be ${whole(high)}`
}
