import type { WaterConstants } from '@shared/schema/station'
import type { Water } from '@shared/schema/water'
import { dayAt } from '@shared/tides/local-time'
import { waterZone } from '@shared/tides/place'
import { ok, type Result } from '@shared/units/result'
import { bench } from '@renderer/state/bench.svelte'
import { figures } from '@renderer/state/figures.svelte'
import { designBy } from '@renderer/state/designs'
import { waters } from '@renderer/state/shelf'
import { stationConstants } from '@renderer/state/station-constants.svelte'
import { tidePicture, type TidePicture } from '@renderer/state/tide-picture'
import type { SheetParams } from '@renderer/state/route.svelte'

interface WaterSheet {
  readonly water: Water
  readonly constants: WaterConstants
  readonly picture: TidePicture
}

/**
 * What the water of a sheet does over some days, for the pot and the soak asked for.
 *
 * @param params `water`, and `day`, `pot` and `soakH` where they are not today's and the Bench's
 * @param days   how many days, by the soak
 * @returns undefined while the water's stations are asked
 */
export function waterSheet(
  params: SheetParams,
  days: (soakH: number) => number,
): Result<WaterSheet> | undefined {
  const water = waters.find(params['water'])?.document
  if (!water) return { ok: false, error: { code: 'not_found', message: 'This water is not on the list.' } }
  const constants = stationConstants.of(water)
  if (!constants?.ok) return constants
  const day = params['day'] ?? dayAt(waterZone(water, constants.value), Date.now())
  const soakH = Number(params['soakH'] ?? bench.trip.soakH ?? 12)
  const pot = params['pot'] === 'none' ? undefined : (designBy(params['pot']) ?? bench.pot)
  const picture = tidePicture({
    ...{
      water,
      constants: constants.value,
      day,
      days: days(soakH),
      pot,
      trip: bench.trip,
      soakH,
      nowMs: Date.now(),
      tables: figures.tables,
    },
  })
  return picture.ok ? ok({ water, constants: constants.value, picture: picture.value }) : picture
}
