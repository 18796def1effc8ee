/** Twine and wire differ by how fast water passes them for their thickness. */
export type Wetted = 'thin-twine' | 'wire'

/** Drag multiplier by length of growth: twice measured at each, straight between. */
const measured: Record<Wetted, { readonly at9mm: number; readonly at21mm: number }> = {
  'thin-twine': { at9mm: 2.2, at21mm: 3.8 },
  wire: { at9mm: 1.5, at21mm: 2.0 },
}

/** Past this nothing was measured. */
const greatestMultiplier = 4

/** Below a week in the water nothing has settled that matters. */
const cleanDays = 7

/**
 * Length of hydroids after weeks in the water in a northern summer, 1.6·weeks + 1.6.
 *
 * @param weeks time in the water, 3-6 measured
 * @returns length [mm]
 * @source line through 6.4 mm at 3 weeks and 11.2 mm at 6, Drag on hydroid-fouled nets 2015 (abstract)
 */
export function hydroidLengthMm(weeks: number): number {
  return 1.6 * weeks + 1.6
}

/**
 * Times by which growth multiplies the drag of twine.
 *
 * @param lengthMm length of the growth [mm], 9-21 measured; never below 1 nor above 4
 * @param wetted   thin twine (Reynolds number about 1000) or wire (about 4000)
 * @returns multiplier
 * @source as `hydroidLengthMm`: 1.5 and 2.0 at Re 4000, 2.2 and 3.8 at Re 1000
 */
export function dragMultiplier(lengthMm: number, wetted: Wetted): number {
  const { at9mm, at21mm } = measured[wetted]
  const straight = at9mm + ((at21mm - at9mm) * (lengthMm - 9)) / 12
  return Math.min(greatestMultiplier, Math.max(1, straight))
}

/** Weeks in the water until wire netting has half again the drag. */
export function weeksToMultiplier(multiplier: number, wetted: Wetted): number {
  const { at9mm, at21mm } = measured[wetted]
  const lengthMm = 9 + ((multiplier - at9mm) * 12) / (at21mm - at9mm)
  return (lengthMm - 1.6) / 1.6
}

/**
 * Times by which growth multiplies the drag of a pot left in the water for days on end; 1 below a week.
 *
 * @param wetDays      days in the water without drying
 * @param wetted       thin twine or wire
 * @param temperatureC water temperature [°C]; growth doubles over 10 °C, from 12 °C, an assumption
 * @returns multiplier; it says nothing of the growth in the user's own water
 */
export function foulingFactor(wetDays: number, wetted: Wetted, temperatureC = referenceC): number {
  if (wetDays < cleanDays) return 1
  const weeks = (wetDays / 7) * 2 ** ((temperatureC - referenceC) / 10)
  return dragMultiplier(hydroidLengthMm(weeks), wetted)
}

const referenceC = 12

/** When to dry a pot out for two days: at four weeks, or once drag is half again. */
export const cleanAt = { wetDays: 28, multiplier: 1.5 } as const
