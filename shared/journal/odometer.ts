import type { AshoreDays } from '@shared/wear/part-use'

/** Hauls and days counted up, as on a pot or a part. */
export interface Odometer {
  hauls: number
  immersedDays: number
  readonly ashoreDays: { -readonly [K in keyof AshoreDays]: number }
}

/** A count from nothing, or of days ashore that nobody wrote down. */
export function odometer(unstatedDays = 0): Odometer {
  return { hauls: 0, immersedDays: 0, ashoreDays: { sun: 0, shade: 0, indoors: 0, unstated: unstatedDays } }
}

/** What was counted from one reading to another, on top of what was carried. */
export function readFrom(carried: Odometer, from: Odometer, to: Odometer): Odometer {
  return {
    hauls: carried.hauls + to.hauls - from.hauls,
    immersedDays: carried.immersedDays + to.immersedDays - from.immersedDays,
    ashoreDays: {
      sun: carried.ashoreDays.sun + to.ashoreDays.sun - from.ashoreDays.sun,
      shade: carried.ashoreDays.shade + to.ashoreDays.shade - from.ashoreDays.shade,
      indoors: carried.ashoreDays.indoors + to.ashoreDays.indoors - from.ashoreDays.indoors,
      unstated: carried.ashoreDays.unstated + to.ashoreDays.unstated - from.ashoreDays.unstated,
    },
  }
}

export function copyOf(reading: Odometer): Odometer {
  return { ...reading, ashoreDays: { ...reading.ashoreDays } }
}
