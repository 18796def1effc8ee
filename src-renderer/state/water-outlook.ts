import type { WaterConstants } from '@shared/schema/station'
import type { Trip } from '@shared/schema/trip'
import type { Water } from '@shared/schema/water'
import { extremesOf, predictWater, waterDays } from '@shared/tides/predict-water'
import { ok, type Result } from '@shared/units/result'

/** Strongest current and extreme heights, as `conditionsAt` takes them. */
export type Predicted = ReturnType<typeof extremesOf>

/** Days that a pot set on the first of them may be down: that day, and as many more as the soak reaches into. */
export const daysDown = (soakH: number | undefined) => Math.min(30, 1 + Math.ceil((soakH ?? 0) / 24))

// Highs, lows and the strongest stream are refined between samples, so ten minutes are fine enough.
const stepS = 600

/**
 * What the water does at its strongest while the pots of a trip are down.
 *
 * @param water     a saved water
 * @param constants constants of the stations that it names
 * @param trip      its date and soak say which days; without a date nothing is predicted
 */
export function tripOutlook(
  water: Water,
  constants: WaterConstants,
  { date, soakH }: Pick<Trip, 'date' | 'soakH'>,
): Result<Predicted> {
  if (date === undefined) return ok({})
  const span = waterDays(water, constants, date, daysDown(soakH))
  return span.ok ? ok(extremesOf(predictWater(water, constants, span.value, stepS))) : span
}
